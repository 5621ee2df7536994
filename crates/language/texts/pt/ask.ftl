# O plano perguntado ao contrário.
ask-change = Ponto de mudança { $number }, { $load_state }: de { $from } para { $to }, começado em { $at }, completo em { $reach_by }.
ask-judged-nine-of-ten = Julgado por nove em dez mudanças. Cada meio sozinho, todo o resto como está; planejado de novo com ele.
ask-judged-nominal = Julgado pela mudança nominal. Cada meio sozinho, todo o resto como está; planejado de novo com ele.

ask-supply-title = Que alimentação de ar basta
ask-supply-fits = Basta como está: nada precisa ser acrescentado.
ask-supply-compressor = Compressor
ask-supply-times = { $times } vezes a vazão atual
ask-supply-times-not = nem mesmo { $times } vezes a vazão atual
ask-supply-tank = Reservatório extra
ask-supply-reserve = { $volume } a mais
ask-supply-reserve-not = nem mesmo { $volume } a mais

ask-cap-title = Circuito de ar { $channel }, { $load_state }, { $pressure } a frio
ask-cap-approved = Fabricante ou norma garante
ask-cap-window = As faixas permitem
ask-cap-exact = O mesmo, sem arredondar
ask-cap-governed = O seguinte acima
ask-cap-none = nenhuma velocidade
ask-cap-above-highest = ACIMA DA MAIOR: BAIXE PRIMEIRO

ask-late-title = A partir de quando é tarde demais
ask-late-latest = Numa viagem comum o último início é em { $latest }. O plano guarda { $in_hand } de folga antes dele, para nove em dez viagens.
ask-late-never = Nenhum início chega a tempo: de lugar algum a mudança termina onde deve.
ask-late-standing = É feita parado, então não há início mais tarde.
ask-late-by = Mais tarde por
ask-late-complete = Completo
ask-late-wrong-road = Com pressão errada
ask-late-descent = Descida
ask-late-on-descent = ENCHE NUMA DESCIDA
ask-late-how = Mais tarde que o último início. Tempo diante de um início ali, no ciclo inteiro; nominal, sem variação entre caminhões e viagens.
