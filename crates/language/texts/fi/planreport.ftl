# The plan report for whoever answers for the haul and pays for it.
planreport-cost-none = Kuljetus ei kerro rahasta, joten kustannuksesta ei voi sanoa mitään: täytä [money] sen tiedostoon.
planreport-what = Mitä suunniteltiin
planreport-why = Maahan sopivat renkaat säästävät tietä ja rengasta ja vetävät paremmin, kunhan jokainen paine sopii kuormaansa ja nopeuteensa. Raportti kertoo jokaisen paineen ja rajan, joka sen määräsi, kuka siitä vastaa, missä kuljettajan on aloitettava kukin muutos ja mitä se maksaa ajassa. Tien hyöty riippuu tiestä, sen kosteudesta ja kuormasta: jotkin julkaistut kokeet eivät osoita hyötyä.
planreport-effects-none = Suunnitelmassa ei ole vaikutuksia; se tehtiin ennen niiden laskemista, tai kuljetusta ei voi ajaa.
planreport-late = Jos kuljettaja pyytää myöhässä tai ei koskaan
