"""The baker's formula and its adjustments: one module a component, put together by convert."""
