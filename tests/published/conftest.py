"""Every check in this folder names what it is checked against.

A test takes a parameter `source`, the id of an entry in data/sources.toml, or carries the mark `source(id)`.
"""

import pytest

from rules.tables import sources


def cited(item) -> list[str]:
    marked = [id for mark in item.iter_markers("source") for id in mark.args]
    given = getattr(item, "callspec", None) and item.callspec.params.get("source")
    return [*marked, given] if given else marked


@pytest.fixture(autouse=True)
def _sources_are_known(request):
    unknown = [id for id in cited(request.node) if id not in sources()]
    assert not unknown, f"add to data/sources.toml: {unknown}"


@pytest.fixture
def uncited(request):
    """Checks of this folder, as collected, that name no source."""
    here = request.path.parent
    return [item.nodeid for item in request.session.items if item.path.parent == here and not cited(item)]
