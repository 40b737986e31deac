"""What ``--json`` prints: the keys of each document, which programs may rely on."""

DOCUMENTS: dict[str, dict[str, str]] = {
    "incidents": {
        "incidents": "each with name, title, rule, theme and keywords, the likeliest first; its likelihood, whether it is "
        "for_teaching only, and what was read in the words (fact, answer, words), to be confirmed",
        "sure": "whether the first few are likely to hold the one meant",
        "read_as": "what misspelt words were taken for",
        "acts": "where the words tell of several acts: the words of each, and its incidents",
        "one_covers": "whether the first incident is likely to cover it all",
    },
    "facts": {"facts": "each with its question, help, source, who decides, unit and answers"},
    "rule": {
        "incident, played_on, edition, form_of_play, sides, local_rules, facts": "what was given; null where it was not",
        "clarified_to": "the day up to which clarifications are taken into account",
        "result": "penalties, action, relief, corrections, citations and reasons, as members of `marram.rules.ruling`",
        "words": "the same as sentences: headline (finding, total, next step), finding (its key), tell (what the player is told), penalties, steps, further (steps the headline does not say), options, missing (relief not offered, and why), if_wrong, cautions, why, provisions; "
        "while facts are missing, question; for `hand_over`, rather: the incident that it rather is, and the facts to add there",
        "case": "what was asked, in the one form that is read back: by `marram story`, the desk's API, and marram.services.cases.case_file",
    },
    "may": {
        "area, played_on": "what was asked",
        "answers": "each with act, verdict (yes, at_a_cost, no, depends, no_relief), title, answer, instead and citation",
    },
    "local-rules": {
        "local_rules": "each with its code, what it changes, and what to know before adopting it"
    },
    "story": {
        "parts": "the result of each incident, as of `marram rule`",
        "combined": "their result together; null while one of them needs facts",
        "count": "strokes of the player: penalty_strokes (null: disqualified, or the hole of a match lost), relief_to_come (relief that must still be taken), total (both), made (in the acts), before (the first act), next_stroke, stroke_missing (the act about a ball that had been played though no stroke was told before it) and strokes_untold (the act between which and the next it was not told whether the ball was played; gaps_untold: all of them that can be told together); null until they are combined",
        "other_balls": "what is left to be done with balls of other players: each with ball, act and action",
        "on_next_hole": "the numbers of the acts, from 1, whose penalty counts on the hole after the one just played",
        "words": "their result together as sentences, as of `marram rule`; null while one of them needs facts",
        "case": "as of `marram rule`",
    },
    "changes": {
        "from, to": "the editions or days; of --local-rule instead played_on, code, title, statement and met: each with its example and how many situations",
        "changes": "each with its incident, provision, the facts it is met with, before, after and differences; told one by one each with key, rule, title, before, now, common (1: in most rounds, to 4), situations and the example ruled on both days",
    },
    "relief": {
        "incident, played_on, hole, facts": "what was asked, and the facts it was ruled on with",
        "map_version, map_in_force_from": "the version of the map; null where none is kept",
        "holes_version": "the version of the hole locations of the day; null where none were set",
        "hole_at": "where --flag says the hole is cut (longitude, latitude), and on_map: whether the map has a line of play for it; null where it was not given",
        "area, area_open, metres_to_hole": "where the ball lies, and whether the map leaves open in which area of the course",
        "assumed": "which of the facts are taken for granted",
        "result": "as of `marram rule`",
        "options": "each with option, state (Drawn, NeedsPlace, NoRelief or NotDrawn), lines, area_m2 and drop",
        "not_offered": "what is said of a dropping zone marked for this that only a Local Rule not in force would offer; null where there is none",
        "case": "as of `marram rule`; taken for granted is what `assumed` says",
    },
    "event conditions": {"conditions": "by their keys in `event.json`"},
    "event field": {
        "playing": "each with name, handicap_index and club",
        "reserves, refused, withdrawn": "names; of the reserves the next to move up first",
    },
    "event draw": {"seed, groups, clash, moved": "as of `marram draw`; the key of a player is the name"},
    "event cards": {
        "round": "as given",
        "cards": "each with side and state (nothing, entering, open, returned, out)",
    },
    "event card": {
        "side, round, state": "whose card it is, and how it stands",
        "figures": "each with ball, hole, and what player, marker and scorer gave",
        "beside": "rulings with a penalty: each with hole, strokes, words and settled (null: not yet)",
        "to_do": "what is still to be done in the scoring area, as sentences",
        "findings": "what the Rules were asked: each with name, asks (the open fact, or null) and words",
        "gross": "the scores that count, by ball",
    },
    "event board": {"results": "as of `marram results board`"},
    "event why": {"side, place, before, words, steps": "as of `marram results why`"},
    "event changes": {
        "round": "as given",
        "changed": "each with name, was and now (time and tee; null: none); null where the times were never published",
    },
    "event matches": {
        "matches": "each with round, first, second, status, leader, words, final, holes (hole, winner, up) and doubts"
    },
    "event bracket": {
        "plan": "bracket or round_robin",
        "stages": "each a list of matches: number, first, second, winner and decided (how, in words); null where not known",
    },
    "draw": {
        "seed": "as given",
        "groups": "each with time, tee and players (key and name); empty where wishes clash",
        "clash": "wishes that cannot hold together, and could without any one of them",
        "moved": "how many players a wish moved from the start that the order alone gives",
    },
    "paper": {
        "sheets": "each with title, event, about, day, foot and parts: in order, each with part (words, table, picture or cards) and what stands in it",
    },
    "next-round": {
        "seed, groups, clash, moved": "as of `marram draw`; the key of a player is the name",
    },
    "matches bracket": {
        "seed": "as given",
        "rounds": "each a list of meetings, the uppermost first: number, first, second and winner, each with key and name; null where not known, and in the first round for a bye",
    },
    "matches round-robin": {
        "rounds": "each a list of matches, each a list of two players with key and name",
    },
    "sunset": {
        "day, minutes": "as given",
        "sunset, last_start": "by the clocks of the zone given; null where the sun does not set",
        "polar_night": "whether the sun does not rise that day",
    },
    "results series": {
        "places": "each with place, shared, side, points (exact), each (the points of every competition) and counted (which of them count, from 1)",
    },
    "results close": {
        "closed": "whether the competition is closed now",
        "waits": "what still stands between now and the close, in words",
    },
    "results reopen": {
        "change": "as given",
        "allowed": "whether the result may be changed; null while something is open",
        "result": "as of `marram rule`",
    },
    "entries read": {
        "entries": "all of them, or none where a line is at fault: each with name, handicap_index ('+1.4' for a plus one, empty for none), club, sex, born, number, line, key, side, team and tees",
        "faults": "each with line and fault",
        "notes": "how the file was read",
        "columns": "which heading tells what",
    },
    "entries ballot": {
        "seed": "as given",
        "playing": "as of `marram entries read`, each with the digest it was put in order by",
        "reserves": "the same, the next to move up first",
        "refused, withdrawn": "the same",
        "moved_up": "who plays because somebody withdrew",
    },
    "competition ready": {
        "conditions": "the conditions as they were read, in the form of `event.json`",
        "standing": "what still stands between now and the first start: each with about, what, remedy and stops (whether play could not start so)",
    },
    "results board": {
        "results": "each with score (gross or net), division (null: the whole field), form_of_play, final, places (each with place, shared, side, total, against_level, rounds, left, standing, out, citation and to_decide) and teams",
    },
    "results why": {
        "side, place, before": "who was asked about, the place, and who comes before; null for nobody",
        "words": "the answer in a sentence",
        "steps": "the comparisons in order, the last that which decided: each with by, words, mine, theirs (exact), decided and holes",
    },
    "card rule": {
        "side, round": "whose card it is",
        "settled": "whether nothing is left to do, to ask or to judge",
        "to_do": "what is still to be done in the scoring area, as sentences",
        "differences": "holes on which player and marker differ: each with ball, hole, player and marker",
        "findings": "what the Rules were asked: each with name (under which answers are given), incident, hole, facts, asks (the open fact, or null) and result (as of `marram rule`)",
        "added": "strokes that the Rules add: each with ball, hole and strokes",
        "out": "how the side is out (kind, citation, score, round); null where it is not",
        "gross": "the scores that count, by ball",
    },
    "handicap course": {
        "course_handicap": "rounded; a plus one negative",
        "unrounded": "exact, as a fraction: what an allowance is applied to",
        "steps": "step by step: each with step (its key), values, result (exact, a fraction where no decimal holds it), citation and words",
    },
    "handicap playing": {
        "allowance": "in per cent, of a side lowest handicap first",
        "playing_handicaps": "of each player, or the one of the side: each with value and steps (as of `marram handicap course`)",
        "strokes_received": "with `--match`, the strokes of each from the lowest: value and steps; else empty",
    },
    "handicap strokes": {
        "playing_handicap": "a plus one negative",
        "strokes": "on each hole, in the order of the stroke indexes; negative where strokes are given back",
    },
    "handicap differential": {
        "differential": "in decimals; better than the Course Rating negative",
        "steps": "as of `marram handicap course`",
    },
    "handicap index": {
        "index": "as golfers write it, '+1.4' for a plus one",
        "steps": "as of `marram handicap course`",
    },
    "records verify": {
        "logs": "each with event, name, entries, receipt (number and first digits of the digest of the last entry) and "
        "broken: the first entry that is not as it was, with event, number and how; null where all is",
        "database": "what the database finds wrong with itself",
    },
    "records log": {
        "event": "its name",
        "entries": "each with number, id, recorded_at, digest, kind, given_at, and as far as known by, player, round, hole, "
        "place, corrects, alike, content and sealed (what belongs to it and can be erased); with `--again`, differs (what of the outcome is not "
        "as it was) and today (the ruling in one line)",
    },
    "graph": {
        "incident, played_on, sides": "what it is the graph of; played_on is null for all days, sides where nobody said who plays together",
        "vertices": "questions with their branches, and outcomes; the first is the root, `to` is a place in this list",
    },
    "course check": {
        "usable": "whether the map can be used",
        "faults": "each with severity, check, what, remedy, and where it lies",
    },
    "course mend": {
        "usable": "whether the map can be used, with what was accepted",
        "faults": "what is wrong with it now, each as in course check",
        "proposals": "each with number, mending (its kind), fault, also (other faults it mends), why, before (the features "
        "as they are, by identifier) and choices, each with letter, words, said and edits",
        "accepted": "what was accepted: mending, fault, words",
        "to_choose": "what all-of did not accept, since each leaves a choice",
        "version, output": "the version that holds it, or the file; null where nothing was accepted",
    },
    "course order": {
        "hole": "the hole",
        "distances": "metres to the hole, in the order the balls were given",
        "farthest": "the place of the farthest ball in that list, counted from 0; null when too close to call",
        "margin": "metres between the two farthest",
    },
    "course survey": {"hole": "the hole", "points": "each with its place, accuracy, area, colour and doubts"},
    "course versions": {
        "in_force": "the number of the version in force on the day",
        "versions": "each with its number, day, author, note and edits",
        "course_file_changes": "what the course file changes since; null where nothing",
    },
    "course holes": {
        "locations": "each with hole, place, measures from front and side in metres, slope and warnings",
        "without": "why a hole has none, by its number",
        "slope_considered": "whether elevations were given",
    },
    "course marking": {"sheets": "the tasks of each hole; hole is null for the course as a whole"},
}
"""Each command and its keys; ``marram`` (the version of the document, 1) and ``kind`` come first in all of them."""


def documents_section() -> str:
    """Return the section of docs/cli.md about JSON."""
    head = (
        "\n## JSON\n\nEvery document holds `marram`, the version of its form (1), and `kind`, what it is: for "
        "`marram rule` one of `ruling`, `need_facts`, `judgement`, `hand_over` and `not_covered`. Keys may be added within a "
        "version; none is renamed or removed. Faults go to standard error, never into the document.\n"
    )
    parts = [head]
    for command, keys in DOCUMENTS.items():
        parts.append(f"\n`marram {command}`\n\n")
        parts += [
            f"- {', '.join(f'`{key}`' for key in names.split(', '))}: {what}\n"
            for names, what in keys.items()
        ]
    return "".join(parts)
