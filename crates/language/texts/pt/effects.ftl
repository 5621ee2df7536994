# Efeitos de um plano no solo, na estrada, na tração, no calor, no combustível e no conforto.
effects-how = Diante da pressão plena em toda a rota: as pressões do degrau mais rápido carregado, também vazio. Os números são baixo – médio – alto; uma razão de 1 é sem mudança. Trilhas e desgaste são para as mesmas passagens.
effects-way = Modo de rodar
effects-way-plan = este plano
effects-way-full-pressure = pressão plena
effects-way-constant-reduced = uma pressão reduzida
effects-way-less-load = um quinto menos carga
effects-cycle = Ciclo
effects-gravel-rut = Trilha no
    cascalho ×
effects-asphalt-wear = Desgaste do
    asfalto ×
effects-trips = Ciclos para
    o mesmo
effects-not-assessed = Trechos
    incompletos
effects-unknown = ?
effects-heat-load = Carga térmica dos pneus no ciclo no dia mais quente, em t km/h, corrigida por comprimento e calor: { $groups }. Compare com o valor nominal do fabricante de cada pneu.
effects-heat-load-too-long = Carga térmica dos pneus (t km/h): o ciclo é mais longo que os { $length } da correção por comprimento; pergunte ao fabricante do pneu.

effects-leg = Trecho
effects-run = Viagem
effects-leg-title = { $leg }, { $run }, { $from } a { $to }
effects-patch = Área de
    contato ×
effects-road = O que a
    estrada sente
effects-rolling = Rolamento
    ×
effects-climb = Subida, %
effects-descent = Descida, %
effects-road-rut = trilha { $ratio }
effects-road-wear = desgaste { $ratio }
effects-road-stress = tensão { $ratio }
effects-go = passa
effects-doubtful = duvidoso
effects-no-go = NÃO PASSA
effects-grade = { $word }: { $possible } de { $needed }
effects-legs-how = Área de contato, trilha, desgaste e resistência ao rolamento, divididos pelos da pressão plena, média dos eixos. Subida e descida: o mais íngreme que se consegue, do mais íngreme que há; na descida sobra um décimo da gravidade para frear. Um ponto de interrogação: falta informar algo antes, veja abaixo.
effects-legs-more = Acrescente --full para ver todos os modos e todos os grupos de eixos.
effects-spread = { $leg }, { $run }: de dez casos um sobe menos de { $p10 } %, cinco menos de { $p50 } %, nove menos de { $p90 } %; o trecho tem { $needed } %. { $first }
effects-spread-by = A maior parte da incerteza vem disto: { $input } ({ $share } da variância). Verifique isso primeiro.
effects-spread-nothing = Nenhum dado sozinho decide.
effects-uncertain-strength = a resistência do solo
effects-uncertain-moisture = a umidade dele
effects-uncertain-load = a carga
effects-uncertain-grip = a aderência da superfície
effects-uncertain-model = a escolha do modelo
effects-easiest = { $leg }, { $run }: rola mais fácil com { $groups }.
effects-easiest-group = { $group } a { $pressure } (leva { $held }: { $more } mais duro de rolar)
effects-easiest-lowest = { $group } a { $pressure }, a mais baixa permitida aqui (leva { $held }: { $more } mais duro de rolar)
effects-easiest-how = Rolar mais fácil, de solo fraco a forte: mais macios, os pneus perdem mais em si mesmos; mais duros, afundam. Procurado só entre a pressão mais baixa e a mais alta do degrau. Serve para comparar, não como nível, e nunca é razão para baixar mais.

effects-groups-how = Cada grupo de eixos no modo do plano. Ar: no pneu no dia mais quente, se o trecho for longo o bastante para aquecê-lo. Conforto: mudança da vibração no corpo na mesma velocidade.
effects-bends = Deflexão
effects-area = Área de
    contato
effects-mean-pressure = Pressão
    nela
effects-stress-below = Tensão a
    0,3 m
effects-gap = Vão do rodado
effects-air = Ar
effects-ride = Conforto
effects-asphalt-strain = Deformação do
    asfalto, µm/m
effects-asphalt-life = Vida do
    asfalto ×
effects-subgrade-strain = Deformação do
    solo, µm/m
effects-subgrade-life = Vida do solo ×
    (pela carga)

effects-missing = A preencher
effects-missing-line = { $what }: { $place }, { $keys }. Sem isso falta: { $decides }.
effects-missing-cost-line = { $what }: { $place }, { $keys }. Fica fora do custo até ser informado; 0 diz que não há.
effects-on-legs = { $file }, { $legs }
effects-or = ou
effects-give-soil-strength = resistência do solo
effects-give-pavement-layers = camadas do pavimento
effects-give-grip = aderência, medida
effects-give-dual-spacing = distância no rodado duplo
effects-give-money = dinheiro do transporte
effects-give-fuel-price = preço do combustível
effects-give-season = dias de temporada ganhos
effects-give-payload = carga útil ganha
effects-give-tire-saving = custo de pneus poupado
effects-give-repair-saving = reparos poupados
effects-give-road-cost = manutenção da estrada
effects-give-road-saving = parte poupada da manutenção da estrada
effects-of-time = tempo do ciclo
effects-of-contact = área de contato
effects-of-stress-below = tensão no solo
effects-of-gravel-rut = trilha no cascalho
effects-of-soil-rut = trilha no solo
effects-of-dual-gap = vão do rodado duplo
effects-of-heat-load = carga térmica
effects-of-washboard = costelas
effects-of-pavement = desgaste do pavimento
effects-of-climb = subida
effects-of-descent = descida
effects-of-rolling = resistência ao rolamento e combustível
effects-of-heat = calor no pneu
effects-of-ride = conforto
effects-of-wind-up = torção entre eixos
effects-of-spread = dispersão
effects-of-cost = custo
effects-of-cost-item = linha do custo

effects-no-law = { $leg }: não se pode dizer: { $effect }. Motivo: { $reason }.
effects-flag-descent = CUIDADO NA DESCIDA: pelo menor valor, sobe mais do que consegue segurar descendo em { $places }. O que pneus macios dão na subida não existe para os freios.
effects-flag-wind-up = Eixos motrizes com pressões diferentes torcem um contra o outro: { $places }. Deixe os bloqueios abertos em chão firme.
effects-flag-washboard = Deve formar costelas, porque com o caminhão vazio os pneus são tão duros: { $places }.
effects-flag-gap = Podem restar menos de 10 mm entre os pneus do rodado duplo: { $places }. Meça o vão no caminhão, na menor pressão e com carga plena. Com correntes: meça antes; não se achou publicada nenhuma folga para correntes de caminhão.
effects-flag-heat-stop = QUENTE DEMAIS no dia mais quente, se o trecho for longo o bastante para aquecer o pneu: { $places }.
effects-flag-heat-warn = Quente no dia mais quente, se o trecho for longo o bastante para aquecer o pneu: { $places }. Veja por quê, ou vá mais devagar.
effects-ride-less = Conforto: { $least } a { $most } % menos vibração no corpo na mesma velocidade. Não em todo segmento, e perde-se se o motorista acelera; não se pode dar número para assento nem saúde.
effects-ride-none = Conforto: sem menos vibração no corpo.
effects-note-top = A pressão baixa poupa o topo da estrada. De 0,3 m para baixo manda a carga, e as medições quase não acharam diferença; menos carga poupa esse solo também.
effects-note-asphalt = O desgaste do asfalto é o melhor caso: o modelo pressiona por igual, os pneus não. Nada diz de um revestimento que se solta nem da borda da estrada.
effects-note-memory = As trilhas no solo, a trilha no cascalho e os modelos de tração se apoiam em parte em equações de memória. Compare com a fonte, e com uma trilha vista na estrada, antes que dinheiro ou uma licença dependam delas.
effects-note-own-case = Quanto uma estrada ganha depende da estrada, da umidade e da carga; nenhuma porcentagem única vale.

effects-trials = O que ensaios de pressão mais baixa acharam em solo assim, incluídos os que nada acharam (pressão baixa dividida pela alta):
effects-trials-brief = { $count ->
    [one] Ensaios de pressão mais baixa em solo assim: { $count } achou ganho (--full diz quanto), estes não acharam:
   *[other] Ensaios de pressão mais baixa em solo assim: { $count } acharam ganho (--full diz quanto), estes não acharam:
}
effects-sources = Os efeitos se apoiam em { $count } fontes, que --full lista. De memória: { $memory }. Prática comum, sem fonte: { $practice }.
effects-trial = { $effect } em { $ground }: { $found } [{ $source }, { $read }]
effects-trial-between = { $low } a { $high }
effects-trial-up-to = até { $high }
effects-trial-less = menos, sem número dado
effects-trial-no-difference = nenhuma diferença
effects-trial-of-traffic-to-failure = tráfego até falhar
effects-trial-of-asphalt-strain = deformação do asfalto
effects-trial-of-asphalt-life = vida do asfalto
effects-trial-of-rutting = trilhas
effects-trial-of-aggregate-thickness = agregado necessário
effects-trial-of-maintenance = manutenção da superfície
effects-trial-of-sediment = sedimento
effects-trial-of-deep-stress = tensão a 0,3 m e mais fundo
effects-trial-on-asphalt = asfalto
effects-trial-on-asphalt-on-peat = asfalto fino sobre turfa
effects-trial-on-thawed-pavement = estrada pavimentada no degelo
effects-trial-on-thin-membrane = revestimento fino
effects-trial-on-aggregate = agregado
effects-trial-on-dry-strong-gravel = cascalho seco e firme
effects-trial-on-subsoil = solo
effects-trial-read-abstract = resumo lido
effects-trial-read-news = notícia lida
