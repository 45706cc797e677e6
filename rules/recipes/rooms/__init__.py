"""The shelf of recipes: one room for each thing about a recipe that rules are asked."""
