# The plan report for whoever answers for the haul and pays for it.
planreport-cost-none = Le transport ne dit rien de l'argent, donc rien ne peut être dit du coût : remplir [money] dans son fichier.
