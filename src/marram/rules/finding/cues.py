"""Words that answer a question: for the facts that are asked most, what is said when they are so.

The patterns meet a sentence in lower case, numbers as digits where they are written so (:func:`.sentence.plain`). Each is our own choice of
everyday words, in English. What they read is only proposed: a person confirms it before it counts.
"""

import re
from collections.abc import Mapping
from re import Pattern


def _answers(**said: str) -> Mapping[str, Pattern[str]]:
    return {answer: re.compile(rf"\b(?:{words})\b") for answer, words in said.items()}


_OWN = r"(?:the |a |his |her |my |our |your |their |that |this |an )?(?:\w+ )?"
_BUNKER = rf"in(?:to|side)? {_OWN}(?:bunkers?|sand trap|trap)|from {_OWN}bunker|bunker shot|in the sand"
_GREEN = rf"on(?:to)? {_OWN}(?:putting )?green|putt(?:ed|ing|s)?"
_PENALTY_AREA = rf"in(?:to|side)? {_OWN}(?:penalty area|hazard|pond|ditch|stream|burn|creek|lake|river)"
_GENERAL_AREA = (
    rf"(?:on|in|into|off|down) {_OWN}(?:semi[- ]rough|fairway|rough|fringe|apron|trees|woods?|heather)"
)
_TEEING_AREA = rf"on {_OWN}(?:tee|teeing area|teeing ground)(?! (?:peg|marker))"
_ON_PURPOSE = r"on purpose|deliberate(?:ly)?|intentional(?:ly)?|meant to|purposely"
_BY_ACCIDENT = (
    r"(?:by |an? )?accident(?:al(?:ly)?)?|by mistake|inadvertent(?:ly)?|unintentional(?:ly)?|without meaning(?: to)?"
    r"|(?:did not|not) mean(?:t)?(?: to| it)?|not on purpose|not deliberate(?:ly)?|clumsily"
)
_AREAS = _answers(
    bunker=_BUNKER,
    putting_green=_GREEN,
    penalty_area=_PENALTY_AREA,
    general_area=_GENERAL_AREA,
    teeing_area=_TEEING_AREA,
)
_COLOURS = _answers(
    red=r"red(?: \w+)? (?:penalty area|stakes?|line|posts?|hazard|area)|lateral (?:water )?hazard",
    yellow=r"yellow(?: \w+)? (?:penalty area|stakes?|line|posts?|hazard|area)",
)
_SIDE = r"(?:i|we|he|she|the player|player|caddie|caddy|(?:his|her|my) partner|(?:his|her|my|the) caddie)"
_MOVING = r"(?:moved|kicked|trod on|stood on|stepped on|knocked|touched|lifted|picked up|hit|nudged|bumped)"
_OPPONENT = rf"(?:(?:my|his|her|the|an) )?opponent(?:'?s caddie)? (?:accidentally |has |had )?{_MOVING}"
_OUTSIDER = (
    rf"(?:(?:a|an|the|some|another) )?(?:\w+ )?(?:spectator|dog|fox|crow|bird|child|kid|boy|girl|walker|greenkeeper|marshal|"
    rf"steward|buggy|mower|squirrel|seagull|other player|another player|somebody|someone)(?: (?:has|had|accidentally))? {_MOVING}"
)
_NOT_PLAYED = r"(?:has|have|had)? ?not (?:yet )?(?:played|hit|putted|made (?:a|the|his|her) stroke)|before (?:playing|the stroke|i play(?:ed)?|he play(?:ed)?|she play(?:ed)?)"
_PLAYED = r"(?:and|then|then i|then he|then she|i|he|she) (?:played|putted|hit) (?:it|on|out|from there|the ball|the shot|his next|her next)|and played|played from there|made (?:a|the) stroke"

_TOO_LATE = r"(?:[4-9]|[1-9][0-9]|four|five|six|seven|eight|nine|ten)(?: and a half)? min(?:ute)?s?"
_WATER_ON = r"(?:under|flooded|covered|full of|standing in)"
_SHOWS_WIND = r"(?:powder|talc|handkerchief|hanky|ribbon)"
_TOSSED = r"(?:toss|threw|throw|drop|let fall|pick)(?:s|es|ed|ped|ing|ping)?"

CUES: Mapping[str, Mapping[str, Pattern[str]]] = {
    "area_of_ball": _AREAS,
    "form_of_play": _answers(
        match_play=r"match ?play|in (?:a|the|my|our|his|her) match|in matches|opponent(?:s|'s)?|concede(?:d|s)?|(?:halved|won|lost) the hole",
        stroke_play=r"stroke ?play|medal(?: play)?|strokeplay|in the medal|fellow[- ]competitors?",
        stableford=r"stableford",
        maximum_score=r"maximum score",
        par_bogey=r"(?:par|bogey)(?: or bogey)? competition|par/bogey",
    ),
    "penalty_area_colour": _COLOURS,
    "movement_accidental": _answers(yes=_BY_ACCIDENT, no=_ON_PURPOSE),
    "stood_there_deliberately": _answers(yes=_ON_PURPOSE, no=_BY_ACCIDENT),
    "while_searching": _answers(
        yes=r"search(?:ing|ed)?|look(?:ing|ed) for|hunt(?:ing|ed)? for|while (?:trying|helping) to find|probing|identif\w+"
    ),
    "moved_while": _answers(
        searching=r"search(?:ing|ed)?|looking for|hunting for|trying to (?:find|identify)",
        marking_lifting_replacing=r"(?:while |when |in )?(?:marking|replacing|lifting)(?: (?:it|the ball|my ball|his ball|her ball))?|placing (?:a|the|his|her|my) (?:coin|marker|ball-marker)",
        removing_movable_obstruction=r"(?:removing|moving|moved|removed|lifted|lifting) (?:a|the) (?:rake|stake|sign|bottle|can|hose|flagstick)",
        removing_loose_impediment=r"(?:removing|moving|moved|removed|picked up|brushed away) (?:a|the|some|his|her) ?(?:\w+ )?(?:leaf|leaves|twig|stone|stick|cone|branch|loose impediment)",
        measuring=r"measur(?:ing|ed)",
        taking_relief=r"(?:taking|took) relief",
    ),
    "who_moved_ball": _answers(
        player=rf"{_SIDE} (?:\w+ )?{_MOVING}", opponent=_OPPONENT, somebody_else=_OUTSIDER
    ),
    "what_moved_ball": _answers(
        opponent=_OPPONENT,
        outside_influence=_OUTSIDER,
        natural_forces=r"wind|gust|breeze|blew|blown|gravity|by itself|on its own|rain|water moved",
    ),
    "who_moved_marker": _answers(
        player=rf"{_SIDE} (?:\w+ )?{_MOVING}", opponent=_OPPONENT, somebody_else=_OUTSIDER
    ),
    "who_lifted": _answers(
        player_or_authorised=r"(?:i|he|she|the player|player) (?:marked and )?(?:lifted|picked up|picked it up|lifts|picks up)",
        caddie_without_authority=r"caddie (?:lifted|picked up|picks up|lifts) .*without (?:asking|being asked|being told|permission)",
    ),
    "provisional_state": _answers(
        not_played=r"no provisional|(?:did not|not|never) (?:play|played|hit|hitting) a provisional|without (?:playing |hitting )?a provisional",
    ),
    "announced": _answers(
        before=r"announced (?:it as )?(?:a )?provisional|said (?:it was )?(?:a )?provisional|called it a provisional|saying (?:it was )?a provisional",
        not_clearly=r"without (?:announcing|saying|declaring)(?: anything| it| a word)?|did not (?:announce|say|declare)|said nothing|never said",
    ),
    "off_time": _answers(
        late=r"late|after (?:his|her|my|the) (?:starting time|tee time)", early=r"(?:too )?early"
    ),
    "stroke_was_made": _answers(yes=_PLAYED, no=_NOT_PLAYED),
    "played_since_put_down": _answers(yes=_PLAYED, no=_NOT_PLAYED),
    "played_after_search": _answers(yes=_PLAYED, no=_NOT_PLAYED),
    "late_ball_played": _answers(yes=_PLAYED, no=_NOT_PLAYED),
    "next_hole_started": _answers(
        yes=r"(?:teed off|drove|driven|played|started) (?:on|at|from) the next|on the next (?:tee|hole) (?:already|i|he|she)",
    ),
    "played_from_green": _answers(
        yes=r"putt(?:ed|ing)?(?: from)? (?:on|from) the green|played from the green"
    ),
    "who_ignored": _answers(by_agreement=r"agree(?:d|ment)?|(?:we|they|both|all) decided"),
    "someone_had_started": _answers(
        called_off=r"call(?:ed|ing) (?:it|this|that|(?:the|their|our) (?:agreement|deal|whole thing)) off"
        r"|call(?:ed|ing) off (?:the|their|our) (?:agreement|deal)|(?:agreement|deal) (?:was |had been )?called off",
    ),
    "advice_deed": _answers(
        received_unasked=r"(?:unasked|without (?:being asked|asking)|nobody (?:had )?asked|had not asked) .*told (?:me|him|her|us)"
        r"|(?:told|gave|advised) (?:me|him|her|us|the player) .*(?:unasked|without (?:being asked|asking)|nobody (?:had )?asked|had not asked)",
        asked=r"(?:asked|asks|asking) (?:me|him|her|us|his|my|the|another|a)\b[^,;.]* (?:which club|what club|what (?:he|she|i|they) (?:hit|played|used))",
        touched_equipment=r"(?:touched|felt|lifted the towel|pulled aside the towel)[^,;.]* (?:bag|clubs?)",
    ),
    "fixed_object": _answers(
        immovable_or_boundary=r"(?:white|boundary|out of bounds) (?:stakes?|posts?|pegs?|markers?|fence)",
        tee_marker=r"tee[- ](?:marker|block)s?",
        growing_or_attached=r"(?:branch(?:es)?|twigs?|grass|leaf|leaves|bush|shrub|fern|bramble|sapling)",
    ),
    "asked_or_allowed": _answers(
        yes=r"asked (?:for|him|her|me|them|the caddie|his caddie|her caddie)|requested|allowed it"
    ),
    "certain_in_penalty_area": _answers(
        yes=r"(?:saw|seen|watched) (?:it|the ball|my ball) (?:\w+ )?(?:splash|go(?:ing)? in|drop(?:ping)? in|land(?:ing)? in)|splash(?:ed)?|(?:virtually )?certain",
        no=r"not (?:sure|certain)|nobody saw|might be in",
    ),
    "found_in_penalty_area": _answers(
        yes=r"(?:found|can see|see|sits?|lies?|lying) (?:it |the ball |my ball )?(?:\w+ )?in the (?:penalty area|pond|ditch|water|stream|burn|creek)",
        no=r"(?:can ?not|could not|not|never) (?:be )?f(?:i|ou)nd|nowhere to be (?:seen|found)"
        rf"|(?:found|find|finds) [^,;.]*(?:after|in) {_TOO_LATE}|(?:found|find|finds) [^,;.]*{_TOO_LATE} (?:after|into)"
        rf"|after {_TOO_LATE}[^;.]*(?:found|find|finds) (?:it |the ball |my ball )?(?:\w+ )?in the (?:penalty area|pond|ditch|water|stream|burn|creek)",
    ),
    "in_the_way": _answers(
        two_conditions=rf"(?:cart )?path (?:that |which )?(?:is |was )?{_WATER_ON}[^,;.]*water|water on (?:a|the) (?:cart )?path",
    ),
    "equipment_use": _answers(
        wind_measured=r"wind (?:gauge|meter|speed meter)|anemometer|measur(?:ed|es|ing) the wind"
        rf"|{_SHOWS_WIND}[^,;.]* (?:the )?wind",
        grass_tossed=rf"{_TOSSED} (?:up )?(?:some |a few |a pinch of |a bit of )?(?:blades of )?(?:grass|leaves)[^,;.]* wind",
        weather_report=r"weather (?:app|forecast|report|radar)",
    ),
    "when_practised": _answers(
        between_holes=r"between (?:two |the )?holes|after the hole|on the next tee|green (?:just|he had just|she had just|i had just|they had just) \w+",
        play_stopped=r"(?:while|when) play was (?:suspended|stopped)",
    ),
    "practised_from_bunker": _answers(
        yes=r"(?:from|out of|in) (?:a|the) (?:\w+ )?bunker|bunker shots?",
    ),
    "would_have_stopped": _answers(
        out_of_bounds=r"(?:would|was going|heading|headed) .*out of bounds",
    ),
    "new_place": _answers(
        out_of_bounds=r"out of bounds|over the boundary", in_the_hole=r"(?:into|in) the (?:hole|cup)"
    ),
    "cleaned_when_lifted": _answers(
        yes=r"(?<!not )(?:clean(?:ed|s|ing)|wiped|rubbed)",
        no=r"(?:without cleaning|not clean(?:ed)?|did not (?:clean|wipe))",
    ),
    "spot_marking": _answers(
        not_marked=r"without (?:marking|a mark)(?: it| the spot)?|(?:did not|never|forgot to|not) mark(?:ed)?",
        right=r"(?<!without )(?<!not )(?:marked (?:it|the ball|my ball|his ball|her ball)|with a (?:coin|marker|ball-marker) behind)",
    ),
    "conditions_improved": _answers(
        yes=r"improv(?:ed|ing) (?:the |my |his |her )?(?:lie|line|stance|swing|area)",
        no=r"(?:did not|without|not) improv\w+",
    ),
    "backed_away": _answers(
        yes=r"(?:backed|stepped|moved) (?:away|off|back)",
        no=r"(?:did not|without|never) (?:back|backing|step|stepping) (?:away|off)",
    ),
    "holed_out": _answers(
        yes=r"holed out", no=r"(?:did not|never|not|without) (?:hole|holing|holed) out|picked up"
    ),
    "altered_place": _answers(bunker=_BUNKER, putting_green=_GREEN, own_teeing_area=_TEEING_AREA),
    "knew_it_applied": _answers(
        yes=r"knew|knowing|aware", no=r"(?:did not|not|without) know(?:ing)?|unaware|had no idea|ignoran\w+"
    ),
    "facts_reported": _answers(
        yes=r"reported", no=r"(?:did not|never|not|without) (?:report|told|tell|reporting|telling)"
    ),
    "ball_found_in_accumulation": _answers(
        no=r"(?:can ?not|could not|never|not) (?:be )?f(?:i|ou)nd|lost in"
    ),
    "caddie_authorised": _answers(
        yes=r"(?:asked|told|let) (?:him|her|the caddie|his caddie|her caddie|my caddie)",
        no=r"without (?:asking|being asked|being told|permission)|unasked|on his own|off his own bat",
    ),
}
"""By fact and answer: what is said when it is so. A fact that two answers claim is not read at all."""

AMOUNTS: Mapping[str, str] = {
    "minutes": r"min(?:ute)?s?",
    "seconds": r"sec(?:ond)?s?",
    "holes": r"holes?",
    "strokes": r"strokes?",
    "club-lengths": r"club[- ]?lengths?",
}
"""How the unit of a number is said."""

NUMBERS = {
    word: number
    for number, word in enumerate(
        ["one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"],
        start=1,
    )
}
"""Numbers in words."""
