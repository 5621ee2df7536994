# The plan report for whoever answers for the haul and pays for it.
planreport-cost-none = Der Transport nennt kein Geld, also ist über Kosten nichts zu sagen: [money] in seiner Datei ausfüllen.
