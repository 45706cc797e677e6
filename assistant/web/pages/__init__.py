"""The pages: a module each, or for several that belong together, which holds `routes`."""
