"""Mending by sound needs jellyfish, a part of the extra `voice`."""

import pytest

pytest.importorskip("jellyfish", reason="jellyfish is not installed: pip install 'simmerline[voice]'")
