# The plan report for whoever answers for the haul and pays for it.
planreport-cost-none = El acarreo no dice nada de dinero, así que nada se puede decir del costo: llene [money] en su archivo.
