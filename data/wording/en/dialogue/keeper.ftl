# Files that a cook asked for.

written = Written to { $file }.
not-drawn = { CAPITAL($reason) }.
not-written = The file could not be written: { $reason }.
# where the picture stands under what is said
shown = Here it is.
