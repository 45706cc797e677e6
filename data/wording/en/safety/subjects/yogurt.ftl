scald-label = Heat the milk to
pitch-label = Add the culture at
keep-label = Keep it at
time-label = For
headline =
    Heat milk for yogurt to { $scald }, cool it to { $pitch }, stir in the culture and keep it warm 4 to 8 h, the same at
    every elevation.
start-from = Start from pasteurised milk and a live culture, in clean jars; chill it as soon as it has set.
because = Whey protein sets and the culture grows by temperature, and both lie under the boil of any kitchen.
near-the-boil = The boil at { $place } is { $boil }, only { $room } above the scald: watch the pan.
not-set = Throw it out if it has not set and soured within 12 h, or smells wrong: without acid nothing protects it.
