why = { $way ->
    [up] Fat weakens the crumb; a rich batter holds its rise better at { $place } with { $percent } % less.
   *[down] At { $place } the crumb is strong enough for { $percent } % more fat again.
}
