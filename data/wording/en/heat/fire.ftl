outdoors = Burn charcoal and gas outdoors only.
