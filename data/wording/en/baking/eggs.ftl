lighter = At { $place } eggs { $percent } % lighter do; keeping the size you have does no harm.
larger = About { $percent } % more egg by weight brings protein to set the crumb sooner and water against the dry air.
no-size-between = The change is smaller than the step from one size of egg to the next.
