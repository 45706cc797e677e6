"""`simmerline chat`: through a pipe, at a prompt, resumed, without a store; `simmerline actions` on a socket."""

from __future__ import annotations

import asyncio
import errno
import io
import os
import signal
import socket
import subprocess
import sys
import time
from collections.abc import Iterator
from pathlib import Path

import httpx
import pytest
from prompt_toolkit.application import create_app_session
from prompt_toolkit.completion import CompleteEvent
from prompt_toolkit.document import Document
from prompt_toolkit.input import PipeInput, create_pipe_input
from prompt_toolkit.output import DummyOutput
from typer.testing import CliRunner, Result

import assistant.cli.chat as chat_command
from assistant.answering import reply_to
from assistant.cli.app import create_app
from assistant.cli.chat import completer, dressed, prompt_session
from assistant.cli.paging import page
from assistant.cli.saying import wrapped
from assistant.cli.transcript import Transcript
from assistant.dialogue import keeper
from assistant.dialogue.memory import Memory
from assistant.dialogue.record import Record
from assistant.store import StoreError, conversations

ROOT = Path(__file__).parents[3]
BRAISE = "how long to braise short ribs"
START_S = 30


def chat(*lines: str, options: tuple[str, ...] = ()) -> Result:
    """Hold a conversation through a pipe."""
    return CliRunner().invoke(create_app(), ["chat", *options], input="".join(f"{line}\n" for line in lines))


@pytest.mark.usefixtures("database")
def test_lines_in_replies_out() -> None:
    """A piece that is asked for is given on the next line."""
    done = chat(BRAISE, "7,000", "and at 9,000?")
    assert done.exit_code == 0
    expected = [reply_to(BRAISE), reply_to("7,000", [BRAISE]), reply_to("and at 9,000?", [BRAISE, "7,000"])]
    assert done.stdout == "".join(f"{answer.text}\n\n" for answer in expected)


@pytest.mark.usefixtures("database")
def test_empty_lines_say_nothing_and_quit_ends() -> None:
    """Nothing after quit is answered."""
    assert chat("", "   ", "thanks", "quit", BRAISE).stdout == "You are welcome.\n\n"


@pytest.mark.usefixtures("database")
def test_odd_bytes_are_a_line_like_any_other() -> None:
    """Neither NUL nor broken UTF-8 ends the conversation."""
    done = CliRunner().invoke(create_app(), ["chat"], input=b"\xff\xfe\x00\nthanks\n")
    assert done.exit_code == 0
    assert done.stdout.endswith("You are welcome.\n\n")


@pytest.mark.usefixtures("database")
def test_the_last_conversation_goes_on() -> None:
    """Also with its piece still awaited."""
    chat(BRAISE)
    assert chat("7,000").stdout == reply_to("7,000", [BRAISE]).text + "\n\n"
    assert chat("and at 9,000?").stdout.startswith(reply_to("and at 9,000?", [BRAISE, "7,000"]).headline)


@pytest.mark.usefixtures("database")
def test_a_new_conversation_knows_nothing_of_the_last() -> None:
    """--new begins afresh, and is what is resumed from then on."""
    chat(BRAISE, "7,000")
    assert "What elevation" in chat("how long to boil rice", options=("--new",)).stdout
    assert "for boiling white rice at 7,500 ft" in chat("7,500 ft").stdout.lower()


@pytest.mark.usefixtures("database")
def test_the_kitchen_in_use_is_taken_for_granted_and_may_change() -> None:
    """Also by a conversation that began in another one."""
    add = CliRunner().invoke
    add(create_app(), ["kitchen", "add", "Timberfold Lodge", "--at", "7000ft"])
    add(create_app(), ["kitchen", "add", "bakery", "--at", "5300ft"])
    assert "7,000 ft" in chat("what is my elevation").stdout
    add(create_app(), ["kitchen", "use", "bakery"])
    assert "5,300 ft" in chat("what is my elevation").stdout


@pytest.mark.usefixtures("database")
def test_an_elevation_on_the_command_line_wins_over_what_was_said() -> None:
    """--at is for this conversation, whatever it was about before."""
    chat("how long to braise short ribs at 9,000 ft")
    assert "at 5,300 ft" in chat("say it again", options=("--at", "5300ft")).stdout


@pytest.mark.usefixtures("database")
def test_the_transcript_holds_the_whole_conversation(tmp_path: Path) -> None:
    """What was resumed, too."""
    file = tmp_path / "talk.txt"
    chat("good morning")
    chat("thanks", options=("--transcript", str(file)))
    said = file.read_text(encoding="utf-8")
    assert [line for line in said.splitlines() if line.startswith("You: ")] == ["You: good morning", "You: thanks"]
    assert said.endswith("simmerline: You are welcome.\n\n")


@pytest.mark.usefixtures("database")
def test_a_transcript_that_cannot_be_written_is_refused_at_once(tmp_path: Path) -> None:
    """Before anything is said."""
    done = chat("thanks", options=("--transcript", str(tmp_path / "nowhere" / "talk.txt")))
    assert done.exit_code == 1
    assert "there is no such folder" in done.stderr
    assert not done.stdout


@pytest.mark.parametrize("url", ["sqlite:////dev/null/simmerline.db", "sqlite:///{}/garbage.db", "cuneiform://tablet"])
def test_without_a_store_the_chat_goes_on_and_says_so_once(
    url: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Follow-ups work all the same."""
    (tmp_path / "garbage.db").write_bytes(b"this is no database" * 100)
    monkeypatch.setenv("SIMMERLINE_DB", url.format(tmp_path))
    done = chat(BRAISE, "7,000", "set a timer for 5 minutes", options=("--new",))
    assert done.exit_code == 0
    assert done.stderr.count("without memory") == 1
    assert "for braising short ribs at" in done.stdout
    assert "I cannot keep a timer" in done.stdout


@pytest.mark.usefixtures("database")
def test_timers_are_set_asked_after_and_ring() -> None:
    """Each named after its dish; one that has run out is announced with the next reply, also after a restart."""
    done = chat("set a timer for 1 second for the stock", "set a timer for 40 minutes for the beans")
    assert "stock set: 1 s" in done.stdout
    assert "beans set: 40 min" in done.stdout
    time.sleep(1.1)
    assert chat("thanks").stdout == "The timer for the stock is up.\n\nYou are welcome.\n\n"
    assert chat("thanks").stdout == "You are welcome.\n\n"


@pytest.mark.usefixtures("database")
def test_a_timer_said_again_is_not_set_again() -> None:
    """It is told how long it has."""
    said = chat("set a timer for 40 minutes for the beans", "say it again", "what timers are running").stdout
    assert [line.partition(":")[0] for line in said.split("\n\n") if line] == [
        "Timer for the beans set",
        "Beans",
        "Beans",
    ]


@pytest.fixture
def keyboard() -> Iterator[PipeInput]:
    """What is typed at the prompt."""
    with create_pipe_input() as keys, create_app_session(input=keys, output=DummyOutput()):
        yield keys


def test_ctrl_c_clears_the_line_and_the_up_arrow_brings_it_back(keyboard: PipeInput) -> None:
    """No line is lost."""
    session = prompt_session(())
    keyboard.send_text("how long to braise\x03thanks\r")
    assert session.prompt() == "thanks"
    keyboard.send_text("\x1b[A\x1b[A\r")
    assert session.prompt() == "how long to braise"


def test_what_was_said_last_time_is_under_the_up_arrow(keyboard: PipeInput) -> None:
    """The history is that of the conversation."""
    keyboard.send_text("\x1b[A\r")
    assert prompt_session(("good morning", "thanks")).prompt() == "thanks"


def test_ctrl_d_leaves(keyboard: PipeInput) -> None:
    """On an empty line."""
    keyboard.send_text("\x04")
    with pytest.raises(EOFError):
        prompt_session(()).prompt()


@pytest.mark.parametrize(
    ("typed", "offered"),
    [("how long to bra", "braise"), ("braise short r", "short ribs"), ("chicken th", "chicken thighs")],
)
def test_dishes_and_methods_are_completed(typed: str, offered: str) -> None:
    """By all the words that are typed of them."""
    found = list(completer().get_completions(Document(typed), CompleteEvent()))
    completions = [typed[: len(typed) + c.start_position] + c.text for c in found]
    assert any(line.endswith(offered) and line.startswith(typed) for line in completions)


def test_dishes_that_are_cooked_so_are_offered_first() -> None:
    """Short ribs are braised and shabu shabu is not, though it comes first in the alphabet."""
    offered = [c.text for c in completer().get_completions(Document("how long to braise sh"), CompleteEvent())]
    assert offered[0] == "short ribs"
    assert "shabu shabu" in offered


def test_a_reply_taller_than_the_screen_is_shown_a_screen_at_a_time() -> None:
    """Nothing is lost, nor said twice, and a short reply says nothing of more."""
    text = reply_to("how long to braise short ribs at 7,000 feet", depth=3).text
    shown, rest = dressed(text, 300, 16)
    assert shown.splitlines()[-1] == f"{len(rest.splitlines())} more lines: say more."
    assert len(shown.splitlines()) <= 16
    assert rest.split()[-1] == text.split()[-1]
    assert dressed(text, 300, 200)[1] == ""
    assert dressed("You are welcome.", 80, 24)[0].count("more") == 0


def test_what_must_not_be_done_is_shown_whatever_the_height_of_the_screen() -> None:
    """The line that forbids stands on the first screen."""
    text = "\n".join(["Headline.", "", *("- A figure: 1" for _ in range(40)), "", "Stop: Not so."])
    shown, rest = page(text, 20)
    assert "Stop: Not so." in shown
    assert rest


@pytest.mark.usefixtures("database")
def test_a_depth_holds_for_the_whole_conversation() -> None:
    """One line a reply, whatever is asked; a depth that there is none of is refused."""
    done = chat("how long to braise short ribs at 7,000 ft", "and at 9,000?", options=("--depth", "1"))
    assert "Why" not in done.stdout
    assert "T_sat" in chat("how long to braise short ribs at 7,000 ft", options=("--new", "--depth", "3")).stdout
    assert chat("thanks", options=("--depth", "4")).exit_code == 2


def test_replies_are_wrapped_between_words() -> None:
    """No line is wider than the terminal, and no word is lost."""
    text = reply_to("how long to braise short ribs at 7,000 feet").text
    narrow = wrapped(text, 60)
    assert max(map(len, narrow.splitlines())) <= 60
    assert narrow.split() == text.split()


def test_actions_are_served_on_a_socket_until_interrupted() -> None:
    """Health, one call, and an end without a trace of an error."""
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        port = probe.getsockname()[1]
    command = [sys.executable, "-c", "from assistant.cli import main; main()", "actions", "--port", str(port)]
    environment = {**os.environ, "PYTHONPATH": str(ROOT)}
    server = subprocess.Popen(command, env=environment, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True)
    try:
        assert wait_for(f"http://127.0.0.1:{port}/health") == {"status": "ok"}
        taken = subprocess.run(command, env=environment, capture_output=True, text=True, timeout=START_S)
        assert taken.returncode == 1
        assert "cannot listen" in taken.stderr
        server.send_signal(signal.SIGINT)
        assert server.wait(START_S) == 0
    finally:
        server.kill()
        _, errors = server.communicate()
    assert "Traceback" not in errors


def wait_for(url: str) -> object:
    """What a server answers as soon as it is up."""
    end = time.monotonic() + START_S
    while time.monotonic() < end:
        try:
            return httpx.get(url, timeout=5).json()
        except httpx.HTTPError:
            time.sleep(0.1)
    raise AssertionError(f"{url} does not answer")


def test_rasa_sdk_and_sqlalchemy_are_not_imported_by_the_command_line_alone() -> None:
    """Their import is paid for by the commands that need them."""
    program = (
        "import sys; from assistant.cli import create_app; create_app(); "
        "print([m for m in ('rasa_sdk', 'sqlalchemy', 'spacy') if m in sys.modules])"
    )
    done = subprocess.run([sys.executable, "-c", program], env={**os.environ, "PYTHONPATH": str(ROOT)},
                          capture_output=True, text=True, check=True)  # fmt: skip
    assert done.stdout.strip() == "[]"


def test_an_interrupt_while_it_thinks_ends_the_turn_and_not_the_chat(
    monkeypatch: pytest.MonkeyPatch, database: str
) -> None:
    """The next line is answered."""
    from assistant.dialogue.embedded import Conversation

    say = Conversation.say

    async def interrupted_once(self: Conversation, text: str) -> object:
        if text == BRAISE:
            await asyncio.sleep(0)
            raise KeyboardInterrupt
        return await say(self, text)

    monkeypatch.setattr(Conversation, "say", interrupted_once)
    done = chat(BRAISE, "thanks")
    assert done.exit_code == 0
    assert done.stdout == "You are welcome.\n\n"


# What is written


@pytest.mark.usefixtures("database")
@pytest.mark.parametrize("there", ["file", "link", "folder"])
def test_no_transcript_is_written_over_what_is_there(there: str, tmp_path: Path) -> None:
    kept, talk = tmp_path / "kept.txt", tmp_path / "talk.txt"
    kept.write_text("kept")
    match there:
        case "file":
            talk = kept
        case "link":
            talk.symlink_to(kept)
        case "folder":
            talk.mkdir()
    done = chat("thanks", options=("--transcript", str(talk), *(() if there == "file" else ("--force",))))
    assert done.exit_code == 1
    assert done.stderr.startswith(f"simmerline: {talk}")
    assert kept.read_text() == "kept"


@pytest.mark.usefixtures("database")
def test_a_transcript_is_written_over_where_that_is_wanted(tmp_path: Path) -> None:
    talk = tmp_path / "talk.txt"
    talk.write_text("kept")
    assert chat("thanks", options=("--transcript", str(talk), "--force")).exit_code == 0
    assert talk.read_text().startswith("You: thanks\n\nsimmerline: ")


@pytest.mark.usefixtures("database")
def test_a_transcript_on_a_full_disk_ends_and_the_conversation_goes_on(tmp_path, monkeypatch) -> None:
    class Full(io.StringIO):
        def flush(self):
            raise OSError(errno.ENOSPC, "No space left on device")

    monkeypatch.setattr(Path, "open", lambda path, *args, **kw: Full())
    out = Transcript.begin(tmp_path / "talk.txt", over=False, warn=(said := []).append)
    monkeypatch.undo()
    out.add(("cook", "thanks"))
    out.add(("cook", "thanks"))
    assert out.failed
    assert len(said) == 1
    assert "the disk is full" in said[0]
    monkeypatch.setattr(Transcript, "begin", lambda *args, **kw: Transcript(Path("talk.txt"), Full(), said.append))
    done = chat("thanks", "thanks", options=("--transcript", "talk.txt"))
    assert done.exit_code == 1
    assert done.stdout.count("\n\n") >= 2


# The database


def test_a_database_that_comes_back_is_used_again(database: str, monkeypatch: pytest.MonkeyPatch) -> None:
    told: list[str] = []
    record = Record.resume(new=True, warn=told.append)
    now = [100.0]
    monkeypatch.setattr(keeper, "monotonic", lambda: now[0])
    assert record.store
    fault = StoreError("locked", "The database is in use.")
    monkeypatch.setattr(conversations, "say", lambda *args: (_ for _ in ()).throw(fault))
    record.keep("boil eggs", "At 7,000 ft ...", Memory())
    assert told == [fault.going_on]
    monkeypatch.undo()
    monkeypatch.setenv("SIMMERLINE_DB", database)
    monkeypatch.setattr(keeper, "monotonic", lambda: now[0])
    record.keep("boil rice", "About 19 min ...", Memory())
    assert record.store is None
    now[0] += keeper.LOOK_AGAIN_S
    record.keep("boil corn", "About 8 min ...", Memory())
    assert told[1:] == [keeper.BACK]
    assert record.store
    assert [u.text for u in conversations.said(record.store, record.id)] == ["boil corn", "About 8 min ..."]
    record.close()


@pytest.mark.usefixtures("database")
@pytest.mark.parametrize("lines", [(), ("quit",)])
def test_nothing_said_loads_nothing(lines: tuple[str, ...], monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(chat_command, "load", lambda: pytest.fail("loaded"))
    done = chat(*lines)
    assert (done.exit_code, done.output) == (0, "")
