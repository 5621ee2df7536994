# Vad dokument på papper har gemensamt.
paper-kind-driver-card = Förarkort
paper-kind-sign-list = Skyltlista
paper-kind-driver-lesson = Förarlektion
paper-kind-plan-report = Planrapport
paper-kind-authority-report = Rapport till väghållaren
paper-issued = Plan { $plan }, utfärdad { $date }
paper-draft = UTKAST, inte utfärdat: inte för föraren
paper-page = Sida
paper-about = Körning { $haul }, { $combination }
paper-about-units = Körning { $haul }, { $combination }, enheter { $units }
paper-sources = Källor
paper-source-what = Vad som vilar på den
paper-source = Källa
paper-source-standing = Hur säker den är
paper-drawing = Ritning
paper-fill-in = Fyll i
paper-unit = Enhet

# Kommandot.
paper-written = { $kind }: { $file }
paper-draft-note = utkast: planen enligt dagens inventering är inte utfärdad. Utfärdade planer för denna körning: { $plans }; skriv ut en med --plan.
paper-draft-note-none = utkast: ingen plan för denna körning är utfärdad; airtide plan SURVEY --haul NAME --issue gör det.
paper-kind-setup-sheet = Inställningsblad
paper-kind-commissioning-record = Protokoll från idrifttagning
paper-kind-service-list = Servicelista
paper-kind-recovery-procedure = Losstagning steg för steg
paper-kind-approval-request = Begäran om godkännande
paper-more-pages = tar { $pages } sidor där { $most } är tänkta: i läsbar storlek ryms inte { $channels } luftkretsar och { $changes } bytespunkter på { $paper }. Ett större --paper kan räcka.
