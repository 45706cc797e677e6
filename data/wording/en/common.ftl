# How things are joined, and words that many sentences share. $a and $b are what stands before and after.

comma = { $a }, { $b }
semicolon = { $a }; { $b }
sentence = { $a } { $b }
and = { $a } and { $b }
or = { $a } or { $b }
then = { $a }, then { $b }
it = it
sea-level = sea level
