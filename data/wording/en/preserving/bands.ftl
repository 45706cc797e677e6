# A band of elevations as a table prints it.

open = above { $low_ft } ft
closed = { $low_ft }–{ $high_ft } ft
