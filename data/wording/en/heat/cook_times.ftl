time-here = Time here
time-at-the-baseline = Time at { $baseline }
against-the-baseline = Time against { $baseline }
# $signs: what shows that such a dish is done, a sentence of the dish classes
check = Start checking at the early end of the range. { $signs }
from-frozen = It goes in frozen, which takes about half as long again as thawed: that is reckoned in.
no-time = No tested time is known for this.
