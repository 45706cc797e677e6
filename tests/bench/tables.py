"""Speed and rightness beside general libraries, as Markdown. Run: python tests/bench/tables.py [NAME ...]

Takes scikit-learn and CoolProp (the extras train and test), and hassil and quantulum3, which nothing else here needs:
`pip install hassil quantulum3`, best in an environment of its own. What is missing is said, and the rest goes on.
Times are processor time, the least of a few rounds, and compared within one run. Names: measures, boil, topics,
intents, pace.
"""

from __future__ import annotations

import sys
from importlib import import_module

TABLES = ("intents", "measures", "boil", "topics", "pace")

if __name__ == "__main__":
    unknown = [name for name in sys.argv[1:] if name not in TABLES]
    if unknown:
        sys.exit(f"no table {unknown[0]}; there are {', '.join(TABLES)}")
    for name in sys.argv[1:] or TABLES:
        import_module(f"tables_{name}").table()
