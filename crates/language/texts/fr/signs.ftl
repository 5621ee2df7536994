# Panneaux : à installer ou à vérifier.
signs-how = Les panneaux sont du côté du chauffeur, face au parcours nommé, lisibles à temps depuis la cabine. Mesurer depuis le repère, dans le sens de la marche.
signs-facing = Panneaux face au parcours { $load_state }
signs-board = Panneau
signs-words = Texte
signs-for = Appartient à
signs-stands = Posé
signs-of-change = point de changement { $number }
signs-where-complete = où le changement doit être fini
signs-complete = { $rung } : jusqu'à { $cap }
    PAS FINI : { $slow }
signs-road-owner = Demander au propriétaire de la route avant de poser un panneau.
signs-work = Ceux qui posent les panneaux sont visibles, hors de la circulation.
signs-check = Faire chaque parcours une fois avec la liste et cocher chaque panneau depuis la cabine.
