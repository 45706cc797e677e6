# under a reply that is longer than the screen
more = { $count ->
    [one] One more line: say more.
   *[other] { $count } more lines: say more.
}
