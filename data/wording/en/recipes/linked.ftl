goes-along = It points into a time that changed, and keeps its place in it.
own-pace = What goes in for the end of it softens by its own pace at the boil of the place.
