"""How long an order takes: a menu of 500 different dishes, process start included. Run: python tests/bench/order.py"""

from __future__ import annotations

import subprocess
import sys
import tempfile
import time
from pathlib import Path

from rules.foods.dishes import dishes

DISHES = 500


def menu() -> str:
    """So many different dishes, every way of telling who takes them."""
    takers = ("40%", "35", "half", "all", "side, 60")
    return "Covers: 90\n" + "\n".join(f"{name}, {takers[at % 5]}" for at, name in enumerate(list(dishes())[:DISHES]))


if __name__ == "__main__":
    with tempfile.TemporaryDirectory() as work:
        path = Path(work, "menu.txt")
        path.write_text(menu(), encoding="utf-8")
        for form in ("text", "xlsx"):
            command = [
                sys.executable,
                "-c",
                "from assistant.cli import main; main()",
                "order",
                str(path),
                "--at",
                "7000ft",
            ]
            start = time.perf_counter()
            done = subprocess.run(
                [*command, "--format", form, "--out", str(Path(work, f"order.{form}"))],
                check=False,
                capture_output=True,
            )
            print(f"{DISHES} dishes as {form}: {time.perf_counter() - start:.1f} s, exit code {done.returncode}")
