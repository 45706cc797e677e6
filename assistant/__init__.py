"""What talks to people: language, dialogue, replies, recipes, storage and the front ends."""
