liquid-label = Liquid at a bare simmer
liquid-step = Keep it at a bare simmer, about { $liquid }, with the lid on or just ajar.
