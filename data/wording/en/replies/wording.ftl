taken-from-named = { $name } taken as { $elevation }; say yours if it is higher or lower.
taken-from-place = Elevation taken as { $elevation }, from the place you named; say yours if it is higher or lower.
# a source that nobody has opened
from-memory = { $short } (from memory)
# what stands before a reason, a caution and what forbids
why = Why: { $text }
take-care = Take care: { $text }
stop = Stop: { $text }
