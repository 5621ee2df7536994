# The plan report for whoever answers for the haul and pays for it.
planreport-cost-none = Transporten säger inget om pengar, så inget kan sägas om kostnad: fyll i [money] i dess fil.
