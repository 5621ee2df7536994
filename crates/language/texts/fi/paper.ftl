# Mikä paperisilla asiakirjoilla on yhteistä.
paper-kind-driver-card = Kuljettajan kortti
paper-kind-sign-list = Kylttiluettelo
paper-kind-driver-lesson = Kuljettajan oppitunti
paper-kind-plan-report = Suunnitelmaraportti
paper-kind-authority-report = Raportti tienpitäjälle
paper-issued = Suunnitelma { $plan }, annettu { $date }
paper-draft = LUONNOS, ei annettu: ei kuljettajalle
paper-page = Sivu
paper-about = Kuljetus { $haul }, { $combination }
paper-about-units = Kuljetus { $haul }, { $combination }, yksiköt { $units }
paper-sources = Lähteet
paper-source-what = Mikä nojaa siihen
paper-source = Lähde
paper-source-standing = Kuinka varma se on
paper-drawing = Piirros
paper-fill-in = Täytä
paper-unit = Yksikkö

# Komento.
paper-written = { $kind }: { $file }
paper-draft-note = luonnos: kartoituksen nykyistä suunnitelmaa ei ole annettu. Tämän kuljetuksen annetut suunnitelmat: { $plans }; tulosta valitsimella --plan.
paper-draft-note-none = luonnos: tälle kuljetukselle ei ole annettu suunnitelmaa; airtide plan SURVEY --haul NAME --issue tekee sen.
paper-kind-setup-sheet = Asetuslomake
paper-kind-commissioning-record = Käyttöönottopöytäkirja
paper-kind-service-list = Huoltolista
paper-kind-recovery-procedure = Irtautuminen juuttuneena
paper-kind-approval-request = Hyväksyntäpyyntö
paper-more-pages = vie { $pages } sivua, kun tarkoitus on { $most }: luettavassa koossa { $channels } ilmapiiriä ja { $changes } vaihtokohtaa ei mahdu kokoon { $paper }. Suurempi --paper voi riittää.
