# The plan report for whoever answers for the haul and pays for it.
planreport-cost-none = Kuljetus ei kerro rahasta, joten kustannuksesta ei voi sanoa mitään: täytä [money] sen tiedostoon.
