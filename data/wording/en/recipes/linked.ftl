goes-along = It points into a time that changed, and keeps its place in it.
