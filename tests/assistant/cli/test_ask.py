"""The ask command as a shell sees it."""

import json
import os
from pathlib import Path

import pytest
from typer.testing import CliRunner, Result

import assistant.cli.ask as ask
from assistant.cli import create_app

BRAISE = "how long to braise short ribs at 7,000 feet"


def run(*arguments: str, stdin: str | bytes | None = None) -> Result:
    return CliRunner().invoke(create_app(), list(arguments), input=stdin)


def test_a_question_is_answered_in_plain_text() -> None:
    result = run("ask", BRAISE)
    assert result.exit_code == 0
    assert result.stdout.startswith("About 4 h (3 h 35 min to 4 h 40 min) for braising short ribs at ")
    assert "\x1b" not in result.stdout


def test_words_need_no_quotes() -> None:
    assert run("ask", *BRAISE.split()).stdout == run("ask", BRAISE).stdout


def test_json_follows_the_contract() -> None:
    reply = json.loads(run("ask", "--json", BRAISE).stdout)
    assert reply["schema"] == 1
    assert reply["heard"]["elevation_m"] == 2133.6
    assert {"boiling_point", "liquid_temperature", "oven", "cook_time", "extra_liquid", "pressure_time"} <= {
        f["id"] for f in reply["figures"]
    }


def test_the_same_question_gives_the_same_bytes() -> None:
    assert run("ask", "--json", BRAISE).stdout == run("ask", "--json", BRAISE).stdout


@pytest.mark.parametrize("at", ["7000ft", "7,000 feet", "2133.6 m", "Timberfold Lodge"])
def test_at_gives_the_elevation_that_the_question_lacks(at: str) -> None:
    result = run("ask", "--at", at, "how long to braise short ribs")
    assert result.exit_code == 0
    assert "7,000 ft" in result.stdout


def test_at_does_not_overrule_the_question() -> None:
    assert "9,000 ft" in run("ask", "--at", "7000ft", "how long to braise short ribs at 9,000 feet").stdout


@pytest.mark.parametrize(
    "at", ["nowhere at all", "70000ft", "NaN feet", "", "-5000 ft", "1_000ft", "7000ft 8000ft", "12-7000ft"]
)
def test_an_impossible_at_is_a_misuse(at: str) -> None:
    result = run("ask", "--at", at, BRAISE)
    assert result.exit_code == 2
    assert "simmerline:" in result.stderr


def test_metric_comes_first_where_asked() -> None:
    assert "2,134 m (7,000 ft)" in run("ask", "--units", "metric", BRAISE).stdout.splitlines()[0]


def test_depth_one_is_short_and_depth_three_has_equations() -> None:
    short, deep = (run("ask", "--depth", depth, BRAISE).stdout for depth in "13")
    assert len(short) < len(deep)
    assert "T_sat" in deep


def test_a_missing_elevation_exits_with_three() -> None:
    result = run("ask", "how long to braise short ribs")
    assert result.exit_code == 3
    assert "elevation" in result.stdout


def test_an_off_topic_question_exits_with_four() -> None:
    assert run("ask", "who won the football match last night").exit_code == 4


@pytest.mark.parametrize(
    "arguments", [["ask", ""], ["ask", "   "], ["ask", "--depth", "9", BRAISE], ["ask", "--units", "cubits", "x"]]
)
def test_misuse_exits_with_two(arguments: list[str]) -> None:
    assert run(*arguments).exit_code == 2


@pytest.mark.parametrize(
    "noise",
    [
        b"\x00\x01\x02\xff\xfe",
        "煮る 時間".encode(),
        b"NaN feet",
        b"-1e309 feet",
        b"a" * 10_000_000,
        b"9" * 100_000 + b" ft",
    ],
    ids=["binary", "other script", "nan", "enormous negative", "10 MB", "100,000 digits"],
)
def test_noise_on_standard_input_gets_a_reply(noise: bytes) -> None:
    result = run("ask", "-", stdin=noise)
    assert result.exit_code in (0, 2, 3, 4)
    assert result.stdout.strip() or result.stderr.strip()


def test_jsonl_answers_line_by_line_in_order(tmp_path: Path) -> None:
    lines = [
        BRAISE,
        json.dumps({"text": "why does water boil cooler at 5,000 ft"}),
        "",
        "{broken",
        json.dumps({"text": "and at 9,000?", "context": [BRAISE]}),
        json.dumps({"context": []}),
        json.dumps([1, 2]),
    ]
    file = tmp_path / "questions.jsonl"
    file.write_text("\n".join(lines) + "\n", encoding="utf-8")
    result = run("ask", "--jsonl", str(file))
    replies = [json.loads(line) for line in result.stdout.splitlines()]
    assert ["error" in reply for reply in replies] == [False, False, True, True, False, True, True]
    assert [reply["error"]["line"] for reply in replies if "error" in reply] == [3, 4, 6, 7]
    assert replies[4]["heard"]["dish"] == "short ribs"
    assert round(replies[4]["heard"]["elevation_m"]) == 2743
    assert result.exit_code == 1


def test_jsonl_that_is_not_there_is_a_misuse() -> None:
    result = run("ask", "--jsonl", "/nowhere/questions.jsonl")
    assert result.exit_code == 2
    assert "cannot read" in result.stderr


def test_a_question_and_a_file_together_are_a_misuse(tmp_path: Path) -> None:
    assert run("ask", "--jsonl", str(tmp_path / "x"), BRAISE).exit_code == 2


def test_help_teaches() -> None:
    text = run("ask", "--help").stdout
    assert "short ribs" in text
    assert "Exit codes" in text


def test_a_line_that_is_too_long_is_told_and_the_rest_go_on(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(ask, "LONGEST_LINE", 40)
    (tmp_path / "asked.jsonl").write_text(f"thanks\n{'x' * 500}\nthanks\n")
    result = run("ask", "--jsonl", str(tmp_path / "asked.jsonl"))
    rows = [json.loads(line) for line in result.stdout.splitlines()]
    assert result.exit_code == 1
    assert [row.get("error", {}).get("line") for row in rows] == [None, 2, None]
    assert "longer than the 40 bytes" in rows[1]["error"]["message"]


def test_a_pipe_that_nobody_fills_holds_no_questions(tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "pipe")
    result = run("ask", "--jsonl", str(tmp_path / "pipe"))
    assert (result.exit_code, result.stdout) == (0, "")
