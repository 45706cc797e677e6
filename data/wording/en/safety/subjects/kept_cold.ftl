cooked-food = cooked food
raw-food = raw meat
# $ends: two, or one and the same, or a single day, week or month; $unit: day, week or month
span = { $ends ->
        [two] { $low } to { $high }
       *[one] { $low }
    } { $unit ->
        [day] day
        [week] week
       *[month] month
    }{ $ends ->
        [single] {""}
       *[two] s
    }
# $fridge, $months: spans; $freezer: some or none
headline =
    { CAPITAL($food) } in the refrigerator: { $fridge }{ $freezer ->
        [some] {"; "}in the freezer { $months }, for its quality
       *[none] {""}
    }. The same at any elevation.
cold = At { TEMP(40) } or colder, counted from the day it was cooked; label it with the date. A jar there is only a box with a lid.
cold-raw = At { TEMP(40) } or colder, on the lowest shelf, counted from the day it was bought; a use-by date comes first.
cooled = Cool it from { TEMP(135) } to { TEMP(70) } within 2 h, and to { TEMP(41) } within 4 h more: shallow, or in parts.
reheat = Reheat to { TEMP(165) } in the centre.
trade = In a licensed kitchen ready food that is dated is used within 7 days at { TEMP(41) }, the day it was made counted in.
because =
    Germs grow by temperature and time, and a refrigerator is as cold here as at sea level. Frozen food stays safe; the months
    are for taste.
doubtful = Food that stood over 2 h between { TEMP(41) } and { TEMP(135) } is discarded, whatever it smells like.
