# A chamada da estrada.
now-go = SIGA, NÃO MAIS RÁPIDO QUE { $speed }
now-go-slow = NÃO MAIS RÁPIDO QUE { $speed }, E SÓ ATÉ ONDE SE POSSA CONSERTAR
now-walk = A PASSO DE HOMEM, FORA DA ESTRADA. DEPOIS MEÇA A PRESSÃO.
now-stop = PARE

now-how-far = Até onde
now-far-nowhere = nada até consertar
now-far-off-the-road = fora da estrada até o lugar seguro mais próximo, não mais
now-far-hold = { $limit }; depois pare ou suba a pressão
now-far-next-stop = até a próxima parada; meça de novo lá
now-truck = Caminhão
now-truck-unit = unidade { $unit }, { $combination }, transporte { $haul }
now-truck-combination = { $combination }, transporte { $haul }
now-holds-rung = Está no degrau
now-why = Por quê
now-next = Verifique a seguir
now-safety = Sempre
now-groups = Grupo de eixos por grupo de eixos
now-read = Leitura
now-air = Ar do pneu
now-at-most = No máximo
now-kept = não medido
now-not-gauged = NÃO MEDIDO
now-set-for = O que estava ajustado, diante do que esta carga precisa
now-was-set = Ajustado
now-needed = Necessário

# Por quê.
now-reason-not-gauged = { $axle_group }: ninguém mediu. O que não se sabe não conta como bom.
now-reason-kept-as-surveyed = { $axle_group }: não medido; tomado nos { $kept } a frio que o levantamento dá.
now-reason-under-service-share = { $axle_group }: { $cold } a frio são { $share } dos { $needed } que a carga precisa a passo de homem. Com 80 % ou menos, não encha.
now-reason-too-soft = { $axle_group }: { $cold } a frio é mole demais para qualquer velocidade com esta carga; o mínimo é { $needed } a frio.
now-reason-too-soft-approved = { $axle_group }: { $cold } a frio está abaixo de { $needed }, o mínimo que o fabricante do pneu ou uma norma garante com esta carga.
now-reason-nothing-approved = { $axle_group }: com { $cold } a frio ninguém garante velocidade alguma com esta carga.
now-reason-cannot-be-reached = { $axle_group }: { $reading } não passa de { $closes }, onde as válvulas de roda fecham. O enchimento pela cabine não chega lá.
now-reason-above-highest = { $axle_group }: { $cold } a frio passa da maior, { $highest } ({ $governed_by }). Baixe antes de seguir.
now-reason-mates-differ = { $axle_group }: os pneus do rodado duplo diferem em { $difference }; 5 psi (34 kPa) é o máximo. Conta o mais mole.
now-reason-overloaded = { $axle_group }: leva { $load }, mais que os { $highest } que suporta. Nenhuma pressão resolve.
now-reason-impossible = { $axle_group }: nenhuma pressão serve: { $why }.
now-reason-sets-the-speed = { $axle_group } define a velocidade. O seguinte acima: { $governed_by }.
now-reason-load-unknown = Ninguém conhece a carga: precisa aguentar todo estado de carga, { $load_state } o mais pesado.
now-reason-warmth-unknown = Ninguém disse se os pneus estavam frios: contam como quentes, ou seja, mais moles que a leitura.
now-reason-ran-last-hour = Rodou na última hora: nenhum pneu está frio, diga-se o que for.
now-reason-trailer-unknown = Ninguém conhece o reboque: precisa da pressão de estrada em qualquer velocidade.
now-reason-trailer-left-low = O reboque ficou com pressão baixa: suba e compare com o plano antes de mover.
now-reason-trailer-left-shut = O reboque ficou com as pontas de eixo fechadas: abra e compare com o plano antes de mover.
now-reason-trailer-other-tires = O reboque tem outros pneus; esses foram julgados.
now-reason-other-load-state-selected = O controlador ainda tem as pressões de { $load_state }.
now-reason-held-shortly = O degrau { $rung } é mantido só por pouco tempo.
now-reason-unit-slip = { $axle_group }: { $reading } parece um número em { $meant } dado em { $typed }. Foi tomado como dado.
now-reason-unapproved-counted = PARA O ESPECIALISTA, NÃO PARA O MOTORISTA: contaram pressões que ninguém aprovou.

# O que verificar ou fazer a seguir.
now-check-gauge = { $axle_group }: meça cada pneu à mão, os internos também.
now-check-raise = { $channel }: suba a { $set } (degrau { $rung }) parado, espere terminar e meça de novo.
now-check-lower = { $axle_group }: deixe os pneus esfriarem, depois baixe a { $highest } a frio ou menos.
now-check-leave-to-trained-people = { $axle_group }: não encha. Pessoas treinadas esvaziam, retiram a roda e olham por dentro.
now-check-deflate-before-service = { $axle_group }: pode rodar assim, mas o fabricante do pneu conta { $recommended } como recomendada. Antes de retirar uma roda, pessoas treinadas o esvaziam por completo e o inspecionam.
now-check-find-why-softer = { $axle_group }: descubra por que um pneu está mais mole: vazamento, ponta de eixo fechada ou linha entupida.
now-check-wheel-ends-shut = { $axle_group }: { $count } pontas de eixo estão fechadas à mão e não acompanham; meça esses pneus um por um.
now-check-raise-before-parking = { $axle_group }: suba a pressão antes de estacionar; na noite mais fria as válvulas de roda fechariam.
now-check-ask-maker = { $channel }: nenhuma pressão que alguém garanta pode ser ajustada para esta carga. Pergunte ao fabricante do pneu antes de rodar assim.
now-check-find-out-load = Descubra o que está carregado, ou pese.
now-check-take-load-off = { $axle_group }: tire carga.
now-check-read-sidewalls = Reboque: leia a medida, a faixa de carga e o máximo gravado em cada flanco, e compare.
now-check-open-wheel-ends = Reboque: abra todas as pontas de eixo.
now-check-select-load-state = Escolha { $load_state }, espere terminar em todos os circuitos, e meça.
now-check-read-unit-again = { $axle_group }: leia o manômetro de novo, com a unidade.
now-check-ask-again = Depois pergunte de novo com o que o manômetro mostra.

# O mesmo como tabela para um cartão.
now-table-title = Maior velocidade pelo manômetro, transporte { $haul }
now-table-cold = Para pneus frios: parados por três horas, ou movidos uma milha (1,6 km) no máximo.
now-table-warm = Para pneus quentes.
now-table-not-known = Para pneus que ninguém sabe se estão frios: contam como quentes.
now-table-how = Conta o circuito mais lento. –: não rode; mole demais acima da primeira velocidade de uma coluna, duro demais abaixo da última. Leitura entre duas linhas: tome a mais mole, e um traço como traço.
