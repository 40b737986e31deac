"""The register of Model Local Rules: every published code of areas A to M, in both editions."""

from importlib import import_module

from marram.rules.local_rules.local_rule import LocalRule

AREAS: tuple[str, ...] = tuple("abcdefghijklm")
"""The areas of the list, each a module ``area_x`` with a tuple ``LOCAL_RULES_OF_AREA``."""

REGISTER: dict[str, LocalRule] = {
    one.code: one for area in AREAS for one in import_module(f"{__name__}.area_{area}").LOCAL_RULES_OF_AREA
}
