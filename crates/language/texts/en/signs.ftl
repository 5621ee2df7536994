# The sign list: boards to put up or to check.
signs-how = Boards stand on the driver's side of the road, facing the run named, and are readable from the cab in time. Measure from the landmark, in the direction of travel.
signs-facing = Boards facing the { $load_state } run
signs-board = Board
signs-words = Words on it
signs-for = Belongs to
signs-stands = Stands
signs-of-change = change point { $number }
signs-where-complete = where the change must be complete
signs-complete = { $rung }: up to { $cap }
    NOT COMPLETE: { $slow }
signs-road-owner = Ask whoever owns the road before a board goes up.
signs-work = People who put up boards are seen, and out of the traffic.
signs-check = Drive every run once with the list and tick each board from the cab.
