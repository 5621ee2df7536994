# O que protege as pessoas. Curto, simples, uma coisa por linha.

# The mark of texts that no native speaker has reviewed yet; see the English file.
caution-unreviewed = Texto de segurança não revisado por falante nativo; na dúvida, leia o inglês.
    .reviewed = no

caution-maker-approves = O fabricante do pneu aprova as pressões. Um número aqui não é uma aprovação.
caution-law-decides = A lei local e a autoridade rodoviária decidem o que pode rodar em suas vias.
caution-trained-people = Serviço em rodas, aros e freios é para pessoas treinadas e habilitadas.
caution-rollover = O risco de tombamento não é avaliado.
caution-side-slope = Nenhum degrau baixo em inclinação lateral ou curvas fechadas.
caution-tipping = Nenhum degrau baixo ao bascular ou içar.
caution-ice = Não baixe a pressão para ganhar aderência em gelo ou neve dura.
caution-speed = Fique abaixo do teto de velocidade. Primeiro suba a pressão, depois acelere.
caution-lower-cap-first = Reduza até o teto de velocidade menor antes de começar a baixar a pressão.
caution-wait-complete = Carregado, não saia antes de a mudança terminar em todos os circuitos.
caution-hold-limit = No limite de permanência, pare ou suba a pressão.
caution-brakes-first = Os freios têm prioridade no ar. Não se enche em descida longa nem logo antes dela.
caution-supply-low = A alimentação pode cair a { $pressure } neste transporte.
caution-unapproved = No papel para motoristas, célula sem aprovação mostra a pressão de estrada ou um traço.
caution-from-memory = Um valor vem de memória. Compare com a fonte antes de usar.
caution-cold-tires = As pressões valem para pneus frios a { $temperature }. Pneu quente marca mais.
caution-service-rule = Com 80 % ou menos da pressão necessária, o pneu é retirado e inspecionado por pessoas treinadas. É a nossa leitura de 29 CFR 1910.177: pressão a frio do pior pneu diante da carga e da velocidade reais.
caution-reads-only = Este programa só lê os veículos. Não envia nada a eles.

# Avisos de um plano, com seus números. As células são reunidas numa lista.
caution-needs-approval = Precisa da aprovação do fabricante do pneu antes de rodar – { $cells }.
caution-under-recommended = Com 80 % ou menos de { $recommended }, que o fabricante do pneu conta como recomendada. Pela 29 CFR 1910.177, como a lemos, pessoas treinadas esvaziam esse pneu por completo e o inspecionam antes de retirar a roda – { $cells }.
caution-not-possible = Não é possível, e este transporte não pede – { $cells }.
caution-not-possible-wanted = Não é possível, embora este transporte peça – { $cells }.
caution-slower-rung-used = { $load_state }: { $wanted } não é possível; usa-se { $rung } no lugar.
caution-fixed-group-too-soft = { $axle_group }, { $load_state }: a pressão fixa é baixa demais para a carga. Suba a pressão ou tire carga.
caution-wheel-ends-shut = { $axle_group }: { $count } pontas de eixo fechadas à mão; seus pneus não acompanham uma mudança.
caution-hand-set-too-low = { $cells }: { $wanted } foi ajustado à mão e está abaixo do mínimo, { $lowest }. Não foi usado.
caution-above-ground-advice = O solo pediria { $advice } ou menos e os pneus não permitem – { $cells }.
caution-lead-does-not-fit = Ponto de mudança { $number } em { $place }: a mudança não termina onde deve. Veja as opções.
caution-before-first-move = { $channel }: suba a pressão antes da primeira saída depois da noite mais fria.
caution-held-too-long = { $load_state }: { $rung } é mantido por { $road }; o limite de permanência é { $limit }.
caution-held-too-long-in-time = { $load_state }: { $rung } é mantido por { $time }, paradas incluídas; o limite de permanência é { $limit }.
caution-kept-low = { $load_state }: de { $from } a { $to } o caminhão fica em { $rung }; subir para { $wanted } não terminaria nesse pedaço.
caution-compressor-over-limit = O compressor trabalha { $longest } sem pausa; o limite é { $limit }.
caution-supply-touches-brakes = A alimentação cai a { $lowest }; em { $threshold } o ar dos pneus é cortado para que os freios fiquem com o deles.
caution-crossfall-not-assessed = { $load_state }: a altura da carga não é conhecida, então a inclinação transversal não soma nada ao lado baixo. Desconhecido não é seguro: meça.
caution-estimated-weight = Pesos estimados, não pesados: { $groups }.
caution-body-raised = { $load_state }: a caçamba está levantada. Nenhum degrau baixo, chão firme e plano, sem esterçar; abaixe antes de seguir.
caution-treated-as = { $load_state }: as cargas não são conhecidas; usam-se as de { $other_state }. Pese.
caution-approval-expired = { $tire }: a aprovação ({ $document }) venceu em { $date }. Suas linhas não são usadas até renovar.
caution-approval-tire-changed = { $tire }: a aprovação ({ $document }) foi dada para outro pneu. Suas linhas não são usadas.
caution-approval-rim-changed = { $tire }: a aprovação ({ $document }) foi dada para outro aro. Suas linhas não são usadas.
caution-lead-fits-only-nominally = Ponto de mudança { $number } em { $place }: mais de uma viagem em dez não termina onde deve.
caution-wheel-valves-shut-early = { $channel }: no maior frio, as válvulas de roda fecham antes de chegar ao degrau mais baixo.
caution-driving-habits = O quanto o motorista freia, traciona e faz curvas é suposto (prática comum, sem fonte).
caution-not-driven = O transporte não pode ser rodado segundo o levantamento: { $reason }.

# Depois de uma perda rápida de pressão, nesta ordem.
caution-loss-stop-filling = Depois de uma perda rápida: pare de encher pela cabine.
caution-loss-slow = Reduza com suavidade. Sem freada nem golpe de volante.
caution-loss-stop = Pare em chão firme. Calce as rodas. Fique visível.
caution-loss-look = Olhe pelo lado da banda de rodagem, à distância.
caution-loss-stay-away = Fumaça, bolha, calor, cheiro de queimado, raio ou rede elétrica: afaste-se e ligue.
caution-loss-isolate = Feche pontas de eixo só depois disso.
caution-loss-trained = Fechar um respiro ou encher por uma tomada de teste é para pessoas treinadas.

# Mecânicos.
caution-mechanic-engine = Motor desligado.
caution-mechanic-isolate = Isole o sistema.
caution-mechanic-vent = Alivie a linha antes de soltar porca ou mangueira.

# Atolado.
caution-stuck = Atolado: siga o procedimento impresso ou recuse. Nenhum número é inventado por telefone.
