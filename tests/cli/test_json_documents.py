"""What ``--json`` prints is what docs/cli.md says it prints."""

import json
from pathlib import Path

import pytest

from marram.demo import COURSE, EVENT
from marram.docs.documents import DOCUMENTS
from tests.cli.running import marram

MAP = str(COURSE)
PLACE, OTHER_PLACE = "3.9961,55.0078", "3.9962,55.0078"
MOVED = {"incident": "ball_moved_by_player", "facts": {"cause_known": "yes"}}

HOLE = {"number": 1, "par": 4, "stroke_index": 1}
CARDS = {
    "event": {"players": [{"name": "Maris Quillan-Roe"}, {"name": "Tobiah Ling"}]},
    "course": [HOLE],
    "cards": [{"side": "Tobiah Ling", "gross": [5]}, {"side": "Maris Quillan-Roe", "gross": [4]}],
}
CARD = {"side": "Tobiah Ling", "played_on": "2025-06-21", "course": [HOLE], "acts": [{"act": "returned"}]}

ARGUMENTS = {
    "incidents": ["water"],
    "facts": ["ball_moved_by_player"],
    "rule": ["ball_moved_by_player", "--edition", "2023"],
    "local-rules": ["E-5"],
    "story": ["situation.json"],
    "changes": ["--incident", "unplayable_ball"],
    "may": ["bunker"],
    "relief": [MAP, "--hole", "7", "--ball", PLACE],
    "draw": ["entries.csv", "--seed", "20250620", "--places", "2"],
    "paper": ["starting-sheet", str(EVENT)],
    "next-round": ["cards.json", "--seed", "20250621"],
    "matches bracket": ["entries.csv", "--seed", "20250621", "--winner", "1.1=a. moorhen|"],
    "matches round-robin": ["entries.csv"],
    "sunset": [MAP, "--day", "2025-06-21", "--time-zone", "Europe/London"],
    "results series": ["cards.json", "--points", "3,2,1"],
    "results close": ["club.db"],
    "results reopen": ["breach", "--played-on", "2025-06-21"],
    "entries read": ["entries.csv"],
    "entries ballot": ["entries.csv", "--seed", "20250614", "--places", "1"],
    "handicap course": ["14.3", "--slope", "129", "--course-rating", "71.1", "--par", "72"],
    "handicap playing": ["6", "+2", "--course-handicaps", "--format", "match_play", "--match"],
    "handicap strokes": ["14", "--stroke-indexes", ",".join(map(str, range(1, 19)))],
    "handicap differential": ["94", "--slope", "125", "--course-rating", "73.0", "--par", "72"],
    "handicap index": ["15.3", "15.2", "16.6"],
    "competition ready": [str(EVENT)],
    "results board": ["cards.json"],
    "results why": ["cards.json", "Tobiah Ling"],
    "card rule": ["card.json"],
    "event conditions": ["club.db"],
    "event field": ["club.db"],
    "event draw": ["club.db", "--seed", "20250620"],
    "event cards": ["club.db"],
    "event card": ["club.db", "Fenwin Dulsey"],
    "event board": ["club.db"],
    "event why": ["club.db", "Fenwin Dulsey"],
    "event changes": ["club.db"],
    "event matches": ["club.db"],
    "event bracket": ["club.db"],
    "records verify": ["club.db"],
    "records log": ["club.db"],
    "graph": ["ball_moved_by_player", "--edition", "2023"],
    "course check": [MAP],
    "course mend": [MAP, "--maps", "maps"],
    "course order": [MAP, "--hole", "7", "--ball", PLACE, "--ball", OTHER_PLACE],
    "course survey": [MAP, "points.csv", "--hole", "7"],
    "course versions": [MAP, "--maps", "maps"],
    "course holes": [MAP],
    "course marking": [MAP],
}


@pytest.mark.parametrize("command", DOCUMENTS)
def test_a_document_holds_the_keys_that_are_documented(
    command: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Programs may rely on the keys in docs/cli.md: all of them are there, and no others."""
    monkeypatch.chdir(tmp_path)
    situation = {"edition": 2023, "local_rules": [], "incidents": [MOVED]}
    Path("situation.json").write_text(json.dumps(situation), encoding="utf-8")
    Path("cards.json").write_text(json.dumps(CARDS), encoding="utf-8")
    Path("card.json").write_text(json.dumps(CARD), encoding="utf-8")
    Path("points.csv").write_text(f"longitude,latitude,name,accuracy\n{PLACE},a,1\n", encoding="utf-8")
    Path("entries.csv").write_text("Name,HCP\nA. Moorhen,+1.4\nB. Sedge,PR\n", encoding="utf-8")
    if command.startswith(("records", "event")) or command == "results close":
        made = ["--club", "Quillsand Links", "--event", str(EVENT), "--course", MAP, "--maps", "maps"]
        marram("records", "init", "club.db", *made)
    if command == "event bracket":
        marram("event", "bracket-draw", "club.db", "--seed", "20250620")
    option = [] if command == "graph" else ["--json"]

    found = marram(*command.split(), *ARGUMENTS[command], *option)

    document = json.loads(found.out)
    documented = [key for names in DOCUMENTS[command] for key in names.split(", ")]
    assert set(document) == {"marram", "kind", *documented}
    assert document["marram"] == 1
