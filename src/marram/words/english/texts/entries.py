"""Entries: what the commands print."""

TEXTS: dict[str, str] = {
    "read.one": "{count} entry",
    "read.several": "{count} entries",
    "refused.one": "{count} fault: no entry is taken",
    "refused.several": "{count} faults: no entry is taken",
    "line": "line {line}: {fault}",
    "player": "{name} ({index}, {club})",
    "no_index": "no Handicap Index",
    "no_club": "no club",
    "playing": "Playing",
    "reserves": "Reserves, the next to move up first",
    "over_limit": "Over the handicap limit, or without a handicap",
    "withdrawn": "Withdrawn",
    "moved_up": "Moved up",
    "published": "Wrote {path}. Its SHA-256: {digest}",
    "repeat": "By the SHA-256 digests of the seed {seed}, a line feed and each key.",
    "number_needed": "{option} is a number such as 18.4, not {given}.",
}
