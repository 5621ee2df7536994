# The plan report for whoever answers for the haul and pays for it.
planreport-cost-none = O transporte não diz nada de dinheiro, então nada se pode dizer do custo: preencha [money] no arquivo dele.
