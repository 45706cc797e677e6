"""A converted recipe in words, and in the forms that it is written in. Layout lives in templates/."""
