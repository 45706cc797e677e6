"""Foods that several methods must treat their own way, and the rows of the dishes."""
