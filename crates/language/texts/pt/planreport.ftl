# The plan report for whoever answers for the haul and pays for it.
planreport-cost-none = O transporte não diz nada de dinheiro, então nada se pode dizer do custo: preencha [money] no arquivo dele.
planreport-what = O que foi planejado
planreport-why = Pneus que combinam com o solo poupam estrada e pneu e tracionam melhor, desde que cada pressão combine com sua carga e velocidade. Este relatório dá cada pressão com o limite que a decidiu, quem responde por ela, onde o motorista deve começar cada mudança e quanto custa em tempo. Quanto uma estrada ganha depende dela, de sua umidade e da carga: alguns ensaios publicados não mostram ganho.
planreport-effects-none = Este documento de plano não tem efeitos; foi feito antes de calculá-los, ou o transporte não pode ser dirigido.
planreport-late = Se o motorista pedir tarde, ou nunca
