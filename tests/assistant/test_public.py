"""What other programs build on: its names and signatures, typed, and cheap to import."""

from __future__ import annotations

import inspect
import re
import subprocess
import sys
from pathlib import Path

import pytest

import assistant
from assistant import AssistantError, Kitchen, RulesError, as_json, as_text, ask, convert, kitchen, public
from tests.contracts import faults

ROOT = Path(__file__).parents[2]
ROLLS = "Drop biscuits\n2 cups flour\n1 tbsp baking powder\n1 cup milk\nBake 15 minutes at 425 F."
# a change here breaks programs of others: the version of the package has to say so
SIGNATURES = {
    "ask": "(question: 'str', kitchen: 'Kitchen | None' = None, *, before: 'Sequence[str]' = (), "
    "depth: 'int | None' = None) -> 'Answer'",
    "convert": "(recipe: 'str | bytes', kitchen: 'Kitchen', *, right_at: 'Kitchen' = SEA_LEVEL, style: 'str' = '', "
    "servings: 'float | None' = None) -> 'Converted'",
    "kitchen": "(at: 'str', *, name: 'str' = '', units: 'Units | None' = None, equipment: 'Sequence[str]' = ()) "
    "-> 'Kitchen'",
    "as_text": "(found: 'Answer | Converted', units: 'Units' = 'us') -> 'str'",
    "as_json": "(found: 'Answer | Converted', units: 'Units' = 'us') -> 'dict[str, Any]'",
}
CLASSES = {
    "Answer", "AssistantError", "Because", "Caution", "Converted", "Figure", "Kitchen", "Request", "RulesError",
}  # fmt: skip


def test_its_names_are_these() -> None:
    assert set(assistant.__all__) == set(public.__all__) == {*SIGNATURES, *CLASSES}
    assert set(assistant.__all__) <= set(dir(assistant))
    for name in assistant.__all__:
        assert getattr(assistant, name) is getattr(public, name)


@pytest.mark.parametrize("name", SIGNATURES)
def test_its_functions_take_what_they_took(name: str) -> None:
    function = getattr(assistant, name)
    written = str(inspect.signature(function)).replace(repr(public.SEA_LEVEL), "SEA_LEVEL")
    assert written == SIGNATURES[name]
    assert function.__doc__


def test_what_is_no_name_of_it_is_told_as_python_does() -> None:
    with pytest.raises(AttributeError, match="no attribute 'soup'"):
        assistant.soup  # noqa: B018


def test_the_package_alone_loads_nothing_else() -> None:
    program = "import sys, assistant; print([name for name in sys.modules if name.startswith(('assistant.', 'rules'))])"
    done = subprocess.run([sys.executable, "-c", program], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == "[]"


def test_an_answer_and_a_recipe_as_text_and_as_json() -> None:
    lodge = kitchen("7,000 ft", name="Timberfold Lodge")
    answer = ask("how long to braise short ribs", lodge)
    assert (answer.missing, as_text(answer)) == ((), answer.text)
    assert faults("answer", as_json(answer)) == []
    biscuits = convert(ROLLS, lodge, right_at=kitchen("5,300 ft"))
    assert faults("recipe", as_json(biscuits)) == []
    assert round(as_json(biscuits)["from_elevation_m"]) == 1615
    assert as_text(biscuits).startswith("Drop biscuits")
    assert as_text(biscuits, "metric") != as_text(biscuits)


@pytest.mark.parametrize(
    ("call", "says"),
    [
        (lambda: kitchen("the moon"), "not an elevation"),
        (lambda: kitchen("7000ft", equipment=["flux capacitor"]), "flux capacitor"),
        (lambda: convert(ROLLS, Kitchen()), "no elevation"),
        (lambda: convert("hello", kitchen("7000ft")), "neither an ingredient"),
        (lambda: convert(ROLLS, kitchen("7000ft"), style="gravel"), "gravel"),
    ],
)
def test_what_does_not_do_is_raised_with_what_to_do(call, says: str) -> None:  # type: ignore[no-untyped-def]
    with pytest.raises((AssistantError, RulesError), match=says):
        call()


def test_the_lines_of_the_readme_run(tmp_path: Path) -> None:
    readme = (ROOT / "README.md").read_text(encoding="utf-8")
    code = "\n".join(re.findall(r"```python\n(.*?)```", readme, re.DOTALL))
    assert "from assistant import" in code
    (tmp_path / "cake.txt").write_text(ROLLS, encoding="utf-8")
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True, cwd=tmp_path)
    assert "About 4 h" in done.stdout
    assert "Drop biscuits" in done.stdout


def test_a_checker_of_types_reads_it(tmp_path: Path) -> None:
    program = tmp_path / "program.py"
    program.write_text(
        "from assistant import ask, kitchen\n"
        'answer = ask("boil pasta", kitchen("7,000 ft"))\n'
        "reveal_type(answer.figures)\n"
        "ask(7)\n",
        encoding="utf-8",
    )
    command = [sys.executable, "-m", "mypy", "--no-incremental", "--follow-imports=silent", str(program)]
    done = subprocess.run(command, capture_output=True, text=True, cwd=ROOT, check=False)
    assert 'Revealed type is "tuple[rules.model.Figure, ...]"' in done.stdout.replace("builtins.", "")
    assert 'Argument 1 to "ask" has incompatible type "int"' in done.stdout


@pytest.mark.parametrize("package", ["assistant", "rules"])
def test_it_says_that_it_is_typed(package: str) -> None:
    assert (ROOT / package / "py.typed").is_file()
