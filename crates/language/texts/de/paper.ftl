# Was Dokumente auf Papier gemeinsam haben.
paper-kind-driver-card = Fahrerkarte
paper-kind-sign-list = Schilderliste
paper-kind-driver-lesson = Fahrerunterricht
paper-kind-plan-report = Planbericht
paper-kind-authority-report = Bericht an die Straßenbehörde
paper-issued = Plan { $plan }, ausgegeben { $date }
paper-draft = ENTWURF, nicht ausgegeben: nicht für den Fahrer
paper-page = Seite
paper-about = Transport { $haul }, { $combination }
paper-about-units = Transport { $haul }, { $combination }, Einheiten { $units }
paper-sources = Quellen
paper-source-what = Was darauf ruht
paper-source = Quelle
paper-source-standing = Wie sicher sie ist
paper-drawing = Zeichnung
paper-fill-in = Ausfüllen
paper-unit = Einheit

# Der Befehl.
paper-written = { $kind }: { $file }
paper-draft-note = Entwurf: der Plan der jetzigen Erhebung ist nicht ausgegeben. Ausgegebene Pläne dieses Transports: { $plans }; mit --plan drucken.
paper-draft-note-none = Entwurf: kein Plan dieses Transports ist ausgegeben; airtide plan SURVEY --haul NAME --issue tut es.
paper-kind-setup-sheet = Einstellblatt
paper-kind-commissioning-record = Abnahmeprotokoll
paper-kind-service-list = Wartungsliste
paper-kind-recovery-procedure = Freikommen, wenn festgefahren
paper-kind-approval-request = Antrag auf Freigabe
paper-more-pages = braucht { $pages } Seiten, wo { $most } gedacht sind: in lesbarer Größe passen { $channels } Luftkreise und { $changes } Wechselpunkte nicht auf { $paper }. Ein größeres --paper kann reichen.
