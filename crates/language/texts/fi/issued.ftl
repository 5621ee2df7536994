# Annetut suunnitelmat.
issued-written = Annettu { $plan }: { $file }
issued-units = Yksiköille { $units }, alkaen { $from }
issued-until = Yksiköille { $units }, { $from } – { $until }
issued-no-units = Ei millekään yksikölle; anna seuraava lipulla --assign
issued-unapproved = { $count ->
    [one] { $count } ruutu on hyväksyttävä: kuljettajan paperi näyttää siinä maantiepaineen tai viivan.
   *[other] { $count } ruutua on hyväksyttävä: kuljettajan paperi näyttää niissä maantiepaineen tai viivan.
}
issued-nothing = Suunnitelmia ei ole vielä annettu; airtide plan SURVEY --haul NAME --issue tekee sen.
issued-nothing-unit = Yksiköllä { $unit } ei ole suunnitelmaa.
issued-title = Annetut suunnitelmat, { $day }
issued-plan = Suunnitelma
issued-date = Annettu
issued-haul = Kuljetus
issued-of-units = Yksiköt
issued-days = Voimassa
issued-open = alkaen { $from }
issued-closed = { $from } – { $until }
issued-in-force = Käytössä
issued-in-force-none = ei
issued-in-force-unassigned = ei yksikköä
issued-in-force-all = kyllä
issued-in-force-for = vain { $units }
issued-standing = Vanhentunut
issued-current = ei
issued-comments-only = ei: vain kommentteja tai välejä muuttui, { $files }
issued-touched = ei: mikään, mihin se nojaa, ei muuttunut, { $files }
issued-values = kyllä: { $files }
issued-cannot-tell = ei voi sanoa, kuljetuksessa on virheitä: { $files }
issued-lapsed = kyllä: hyväksyntä tai lupa alkoi tai päättyi
issued-added = { $file } (lisätty)
issued-removed = { $file } (poistettu)
issued-unit-plan = Yksikkö { $unit } ajaa suunnitelmaa { $plan } päivänä { $day }
issued-unit-none = Yksiköllä { $unit } ei ole voimassa olevaa suunnitelmaa päivänä { $day }.
issued-unit-disputed = Yksiköllä { $unit } on kaksi suunnitelmaa päivänä { $day }: { $plans }. Kumpaakaan ei ajeta ennen kuin toinen annetaan uudelleen.
issued-unit-stale = Suunnitelma on vanhentunut; katso taulukko yllä.
issued-ladder = Kuljettajan porrastus, { $chains }, { $unit } ohjaimeen asetettuna
issued-rung = Porras
issued-up-to = Enintään
issued-road-mark = Merkki *: portaan omaa painetta ei ole hyväksytty; sen sijalla on maantiepaine. Viiva: kukaan ei ole paineen takana siinä, tai porrasta ei ajeta niin.
