begin = Set { $set }, { $count } questions. Say next to pass one over, hint for a hint, stop to end.
end = { $score } The same set again: { $command }
bad-name = a trainee needs a name of 1 to { $most } letters, such as Rosa

# how somebody has done so far
nothing-kept = Nothing is kept of { $name } yet. Begin with: simmerline drill --name { $quoted }
all-in-all = { $name }: { $share }, last on { $day }.
by-theme = { $theme }: { $share }
not-asked = not asked yet
share = { $right } of { $count } right ({ $percent } %)
weakest = Most to learn: { $theme }. Try: simmerline drill --theme { $option }
