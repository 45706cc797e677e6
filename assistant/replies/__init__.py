"""Answer -> text, spoken line and JSON. Wording lives in data/wording and templates/, not in code."""
