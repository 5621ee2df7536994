# Ce que les documents imprimés ont en commun.
paper-kind-driver-card = Carte du chauffeur
paper-kind-sign-list = Liste des panneaux
paper-kind-driver-lesson = Leçon du chauffeur
paper-kind-plan-report = Rapport du plan
paper-kind-authority-report = Rapport à l'autorité routière
paper-issued = Plan { $plan }, émis le { $date }
paper-draft = ÉBAUCHE, non émise : pas pour le chauffeur
paper-page = Page
paper-about = Transport { $haul }, { $combination }
paper-about-units = Transport { $haul }, { $combination }, unités { $units }
paper-sources = Sources
paper-source-what = Ce qui s'y appuie
paper-source = Source
paper-source-standing = Degré de certitude
paper-drawing = Dessin
paper-fill-in = À remplir
paper-unit = Unité

# La commande.
paper-written = { $kind } : { $file }
paper-draft-note = ébauche : le plan du relevé actuel n'est pas émis. Plans émis de ce transport : { $plans }; en imprimer un avec --plan.
paper-draft-note-none = ébauche : aucun plan de ce transport n'est émis; airtide plan SURVEY --haul NAME --issue le fait.
paper-kind-setup-sheet = Feuille de réglage
paper-kind-commissioning-record = Procès-verbal de mise en service
paper-kind-service-list = Liste d'entretien
paper-kind-recovery-procedure = Procédure de désenlisement
paper-kind-approval-request = Demande d'approbation
paper-more-pages = prend { $pages } pages là où { $most } sont prévues : dans une taille lisible, { $channels } circuits d'air et { $changes } points de changement n'entrent pas sur { $paper }. Un --paper plus grand peut les contenir.
