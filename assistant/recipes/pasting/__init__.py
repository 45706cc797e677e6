"""A text as people paste it -> its lines as they were meant: without marks, slips of a scanner, names of speakers."""
