time-here = Time here
time-at-the-baseline = Time at { $baseline }
against-the-baseline = Time against { $baseline }
