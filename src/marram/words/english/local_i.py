"""Words for the Model Local Rules of area I: practice."""

PROVISIONS: dict[str, str] = {
    "I-1.1": "By this Local Rule players in a match do not practise on the course before or between rounds, or only as it allows: the general penalty on the first hole, for a second breach disqualification.",
    "I-1.2": "By this Local Rule practice on the course before or between rounds of stroke play is allowed, within the limits it sets.",
    "I-2": "By this Local Rule nobody practises on or near the green of the hole just completed, nor tests it by rubbing or rolling a ball: the general penalty.",
}

NOTES: dict[str, str] = {}
