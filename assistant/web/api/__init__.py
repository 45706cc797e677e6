"""The JSON API: a module a resource, which holds `routes`. Its contract is that of the command line's JSON."""
