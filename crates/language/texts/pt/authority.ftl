# The report to a road authority.
authority-whose = De quem é a estrada
authority-private = particular
authority-public = pública
authority-us-public = pública, Estados Unidos
authority-permits = Termos das licenças
authority-permit = Licença
authority-pressures = Pressão
authority-cold = pneus frios
authority-as-read = como se lê na estrada
authority-tolerance = Tolerância
authority-permit-speed = Velocidade
authority-mass = Massa bruta
authority-interval = Registrado a cada
authority-until = vale até { $day }
authority-not-in-force = NÃO VIGENTE no dia do plano
authority-no-permit = O levantamento não tem licença para esta rota.
authority-uncovered = Estrada pública sem licença no levantamento: { $legs }.
