# Le plan demandé à l'envers.
ask-change = Point de changement { $number }, { $load_state } : de { $from } à { $to }, commencé à { $at }, terminé à { $reach_by }.
ask-judged-nine-of-ten = Jugé sur neuf changements sur dix. Chaque moyen seul, tout le reste comme il est; planifié de nouveau avec lui.
ask-judged-nominal = Jugé sur le changement nominal. Chaque moyen seul, tout le reste comme il est; planifié de nouveau avec lui.

ask-supply-title = Quelle alimentation en air suffit
ask-supply-fits = Cela suffit comme c'est : rien à ajouter.
ask-supply-compressor = Compresseur
ask-supply-times = { $times } fois le débit actuel
ask-supply-times-not = pas même { $times } fois le débit actuel
ask-supply-tank = Réservoir d'appoint
ask-supply-reserve = { $volume } de plus
ask-supply-reserve-not = pas même { $volume } de plus

ask-cap-title = Circuit d'air { $channel }, { $load_state }, { $pressure } à froid
ask-cap-approved = Fabricant ou norme répond de
ask-cap-window = Les plages permettent
ask-cap-exact = Le même, non arrondi
ask-cap-governed = Juste au-dessus
ask-cap-none = aucune vitesse
ask-cap-above-highest = AU-DELÀ DU PLUS HAUT : BAISSER D'ABORD

ask-late-title = À partir de quand il est trop tard
ask-late-latest = Sur un trajet habituel, le dernier départ possible est à { $latest }. Le plan garde { $in_hand } en réserve avant lui, pour neuf trajets sur dix.
ask-late-never = Aucun départ n'est à temps : le changement n'est terminé à l'endroit voulu depuis nulle part.
ask-late-standing = Il se fait à l'arrêt, donc il n'y a pas de départ plus tardif.
ask-late-by = Plus tard de
ask-late-complete = Terminé
ask-late-wrong-road = À la mauvaise pression
ask-late-descent = Descente
ask-late-on-descent = GONFLE DANS UNE DESCENTE
ask-late-how = Plus tard que le dernier départ possible. Temps par rapport à un départ là, sur tout le cycle; nominal, sans dispersion entre camions et trajets.
