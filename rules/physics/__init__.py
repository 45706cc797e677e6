"""The physics: SI inside, each function with its units, range and source."""
