"""The list of rules and their sources."""

from typer.testing import CliRunner

from assistant.cli import create_app
from rules import tables
from rules.book import every_rule


def test_every_rule_is_listed_with_its_sources() -> None:
    text = CliRunner().invoke(create_app(), ["sources"]).stdout
    for _, rule in every_rule():
        assert f"{rule.id}: " in text
    for entry in tables.sources():
        assert f"\n{entry}: " in text


def test_a_word_narrows_the_list() -> None:
    lines = CliRunner().invoke(create_app(), ["sources", "braise"]).stdout.splitlines()
    assert any(line.startswith("braise.oven: ") for line in lines)
    assert not any(line.startswith("brew.") for line in lines)


def test_every_source_of_a_rule_is_in_the_bibliography() -> None:
    assert {source for _, rule in every_rule() for source in rule.sources} <= set(tables.sources())


def test_a_rule_of_a_recipe_is_told_with_its_sources_and_purpose() -> None:
    first = CliRunner().invoke(create_app(), ["sources", "baking.leavening"]).stdout.splitlines()[0]
    assert first.startswith("baking.leavening: Powder and soda ")
    assert "uwyo-altitude-adjusters" in first


def test_a_word_narrows_the_tables_too() -> None:
    lines = CliRunner().invoke(create_app(), ["sources", "--markdown", "braise"]).stdout.splitlines()
    assert any(line.startswith("| `braise.oven`") for line in lines)
    assert not any(line.startswith("| `brew.") for line in lines)
    assert CliRunner().invoke(create_app(), ["sources", "--markdown", "xyzzy"]).exit_code == 3


def test_a_word_that_nothing_has_is_told_and_leaves_with_three() -> None:
    result = CliRunner().invoke(create_app(), ["sources", "xyzzy"])
    assert result.exit_code == 3
    assert result.stdout == ""
    assert '"xyzzy"' in result.stderr
