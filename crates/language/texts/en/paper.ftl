# What documents on paper have in common.
paper-kind-driver-card = Driver card
paper-kind-sign-list = Sign list
paper-kind-driver-lesson = Driver lesson
paper-kind-plan-report = Plan report
paper-kind-authority-report = Report to the road authority
paper-kind-setup-sheet = Set-up sheet
paper-kind-commissioning-record = Commissioning record
paper-kind-service-list = Service list
paper-kind-recovery-procedure = Recovery procedure
paper-kind-approval-request = Approval request
paper-issued = Plan { $plan }, issued { $date }
paper-draft = DRAFT, not issued: not for the driver
paper-page = Page
paper-about = Haul { $haul }, { $combination }
paper-about-units = Haul { $haul }, { $combination }, units { $units }
paper-sources = Sources
paper-source-what = What rests on it
paper-source = Source
paper-source-standing = How well it is known
paper-drawing = Drawing
paper-fill-in = Fill in
paper-unit = Unit

# The command.
paper-written = { $kind }: { $file }
paper-draft-note = draft: the plan as the survey stands is not issued. Issued plans of this haul: { $plans }; print one with --plan.
paper-draft-note-none = draft: no plan of this haul is issued; airtide plan SURVEY --haul NAME --issue does it.
paper-more-pages = takes { $pages } pages where { $most } are meant: in a size that can be read, { $channels } air channels and { $changes } change points do not fit on { $paper }. A larger --paper may hold them.
