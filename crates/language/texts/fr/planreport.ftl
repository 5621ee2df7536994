# The plan report for whoever answers for the haul and pays for it.
planreport-cost-none = Le transport ne dit rien de l'argent, donc rien ne peut être dit du coût : remplir [money] dans son fichier.
planreport-what = Ce qui a été planifié
planreport-why = Des pneus adaptés au sol ménagent la route et le pneu et tirent mieux, tant que chaque pression convient à sa charge et à sa vitesse. Ce rapport donne chaque pression avec la limite qui l'a décidée, qui en répond, où le chauffeur doit commencer chaque changement, et ce que cela coûte en temps. Ce qu'une route y gagne dépend de la route, de son humidité et de la charge : certains essais publiés ne montrent aucun gain.
planreport-effects-none = Ce document de plan n'a pas d'effets; il a été fait avant qu'ils soient calculés, ou le transport ne peut pas être conduit.
planreport-late = Si le chauffeur demande tard, ou jamais
