# Files that a cook asked for.

written = Written to { $file }.
not-drawn = { CAPITAL($reason) }.
not-written = The file could not be written: { $reason }.
