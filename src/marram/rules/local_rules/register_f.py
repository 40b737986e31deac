"""The register of Model Local Rules, area F."""

from marram.rules.local_rules.local_rule import LocalRule

LOCAL_RULES_OF_AREA: tuple[LocalRule, ...] = ()
