import pytest

from rules import tables
from rules.errors import RulesError, UnknownWord


@pytest.fixture
def folder(tmp_path, monkeypatch):
    """A data folder of one's own, with nothing remembered from the real one."""
    readers = (tables.read_csv, tables.read_toml, tables.sources)
    monkeypatch.setattr(tables, "_root", lambda: tmp_path)
    for reader in readers:
        reader.cache_clear()
    yield tmp_path
    for reader in readers:
        reader.cache_clear()


def test_a_table_carries_source_edition_and_units(folder):
    (folder / "x.csv").write_text(
        '# source: crc-handbook\n# edition: 97, page 6\n# units: t=degC, p=kPa\nt,p,note\n1,2,"a, b"\n'
    )
    table = tables.read_csv("x.csv")
    assert (table.source, table.edition) == ("crc-handbook", "97, page 6")
    assert table.units == {"t": "degC", "p": "kPa"}
    assert table.rows == ({"t": "1", "p": "2", "note": "a, b"},)


@pytest.mark.parametrize(
    ("text", "fault"),
    [
        ("a,b\n1,2\n", "first line"),
        ("# source: s\na,b\n1\n", "row 1: wrong number of cells"),
        ("# source: s\na,b\n1,2,3\n", "row 1: wrong number of cells"),
    ],
    ids=["no source", "short row", "long row"],
)
def test_a_bad_table_names_file_and_fault(folder, text, fault):
    (folder / "x.csv").write_text(text)
    with pytest.raises(tables.BadTable, match=f"data/x.csv: .*{fault}"):
        tables.read_csv("x.csv")


def test_a_missing_file_is_named(folder):
    with pytest.raises(RulesError, match=r"data/tables/none\.csv: no such file"):
        tables.read_csv("tables/none.csv")


def test_bad_toml_is_named(folder):
    (folder / "x.toml").write_text("a = \n")
    with pytest.raises(tables.BadTable, match=r"data/x\.toml: "):
        tables.read_toml("x.toml")


ENTRY = '[[source]]\nid = "a"\ntitle = "t"\nshort = "s"\npublisher = "p"\nyear = 1976\nwhere = ""\nbasis = "{}"\n'


def test_sources_are_read(folder):
    (folder / "sources.toml").write_text(ENTRY.format("published"))
    assert tables.source("a") == tables.Source("a", "t", "s", "p", "1976", "", "published")
    with pytest.raises(UnknownWord, match='no source "b"'):
        tables.source("b")


@pytest.mark.parametrize(
    ("text", "fault"),
    [
        (ENTRY.format("hearsay"), 'basis "hearsay" is none of'),
        (ENTRY.format("published") * 2, "stands there twice"),
        ('[[source]]\nid = "a"\n', "missing"),
        (ENTRY.format("published") + 'page = "1"\n', "page"),
    ],
    ids=["basis", "twice", "field missing", "field unknown"],
)
def test_a_bad_source_is_named(folder, text, fault):
    (folder / "sources.toml").write_text(text)
    with pytest.raises(tables.BadTable, match=fault):
        tables.sources()


def test_data_is_found_away_from_the_checkout(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    assert tables.data_path("tables").is_dir()


def test_tables_of_the_physics_are_whole():
    """Row counts and column sums guard against a slip of the hand; the meaning is checked in tests/published."""
    sucrose = tables.read_csv("tables/sucrose_boiling_browne-1912-sucrose.csv").rows
    assert len(sucrose) == 25
    assert sum(float(row["elevation_k"]) for row in sucrose) == pytest.approx(277.6)
    softening = tables.read_csv("tables/softening_z.csv").rows
    assert len({row["dish_class"] for row in softening}) == len(softening)
    assert {row["source"] for row in (*sucrose, *softening)} <= set(tables.sources())
