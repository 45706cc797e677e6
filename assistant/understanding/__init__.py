"""From what was heard to what is meant: the dangers of an utterance, whatever its topic."""
