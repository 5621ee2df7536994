# Approval requests: a letter to the maker of each tire.
request-title = Request for approval: { $size }, load index { $index }, speed symbol { $symbol }
request-from = From
request-from-who = { $responsible }, for { $survey }
request-tire = Tire
request-tire-what = { $size }, rated by { $body }; in our survey { $name }
request-rim = Rim
request-rim-what = { $rim }, stamped maximum { $maximum }
request-rim-unknown = not known to us yet, stamped maximum { $maximum }; we read the stamp and tell you
request-molded = Molded maximum
request-so-far = Your answer so far
request-none-so-far = none
request-lapsed = { $document }; it no longer counts
request-haul = Haul { $haul }: { $distance } a cycle, { $cycles } cycles a day, air from { $coldest } to { $warmest }. Pressures are cold, at { $reference }.
request-line = Line
request-state = Load
    state
request-load = Load
request-speed = Speed
request-distance = A cycle
request-stay = At once
request-hold = At once
    min
request-wanted = Wanted
request-today = Today
request-ground = Line { $line }: the ground would like { $pressure } or less.
request-none-left = Line { $line }: by what we have, no pressure is possible. What would you approve?
request-how = Load: the worst tire, with the lean of the road, uneven mates and the error of weighing. A cycle: road on this line in one cycle. At once: longest road and time without a pause, standing included. Wanted: the lowest pressure of any tire that the plan would run.
request-please = Please tell us for each line
request-please-pressure = the lowest cold pressure you approve;
request-please-hold = the longest road and time at once, where you limit it;
request-please-standing = a row for a standing truck whose tires are changed while it is loaded ({ $time }), if you give one;
request-please-service = what counts as the recommended pressure of a tire in service: your row, or your ordinary table;
request-please-days = number, day and last day of your answer, and the tire and rim it is for.
request-nothing = Nothing to ask: the maker or the standard stands behind every pressure that these hauls drive.
request-no-tire = no tire '{ $tire }' needs an answer; those that do: { $tires }
request-csv-written = Written, to be filled in by the maker: { $file }

# The same as a paper with room for the answer.
request-of-haul = What we ask, haul { $haul }
request-construction = Construction
request-radial-tubeless = radial, tubeless
request-radial-tube = radial, with tube
request-bias-tubeless = bias, tubeless
request-bias-tube = bias, with tube
request-by-table = By table
request-table-how = By table: what the row of a published table, with its allowance for low speed, gives for the load and speed. A dash: no table covers it, or your own rows stand in its place. Bold lines have nobody behind them yet.
request-answer = Your answer
request-approved = Approved, cold
request-approved-road = Longest road at once
request-approved-time = Longest time at once, min
request-remarks = Remarks
request-answer-number = Number of the answer
request-answer-date = Date
request-answer-expires = Counts until
request-answer-for = For tire and rim
request-answer-who = Who answers
request-answer-signed = Signed
