taken-from-named = { $name } taken as { $elevation }; a town is seldom flat.
taken-from-place = Elevation taken as { $elevation }, from the place you named; a town is seldom flat.
# a source that nobody has opened
from-memory = { $short } (from memory)
