# The plan report for whoever answers for the haul and pays for it.
planreport-cost-none = Der Transport nennt kein Geld, also ist über Kosten nichts zu sagen: [money] in seiner Datei ausfüllen.
planreport-what = Was geplant wurde
planreport-why = Reifen, die zum Boden passen, schonen Straße und Reifen und ziehen besser, solange jeder Druck zu seiner Last und Geschwindigkeit passt. Dieser Bericht nennt jeden Druck mit der Grenze, die ihn bestimmte, wer dafür steht, wo der Fahrer jeden Wechsel beginnen muss und was er an Zeit kostet. Wie viel eine Straße gewinnt, hängt von ihr, ihrer Feuchte und der Last ab: manche veröffentlichten Versuche zeigen keinen Gewinn.
planreport-effects-none = Dieses Plandokument enthält keine Wirkungen; es entstand, bevor sie berechnet wurden, oder der Transport kann nicht gefahren werden.
planreport-late = Wenn der Fahrer zu spät oder nie ruft
