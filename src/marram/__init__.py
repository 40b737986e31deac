"""marram: the workbench of a golf rules official.

Facts of a situation → the ruling under an edition of the Rules → relief areas drawn to scale.

>>> from datetime import date
>>> import marram
>>> result = marram.rule("ball_moved_by_player", {}, played_on=date(2024, 5, 1))
>>> type(result).__name__
'NeedFacts'
"""

from importlib import import_module
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from marram.rules.engine.combine import combine
    from marram.rules.engine.request import rule
    from marram.rules.engine.situation import Happened, rule_situation

__version__ = "0.1.0"
__all__ = ["Happened", "__version__", "combine", "rule", "rule_situation"]

_WHERE = {
    "Happened": "marram.rules.engine.situation",
    "combine": "marram.rules.engine.combine",
    "rule": "marram.rules.engine.request",
    "rule_situation": "marram.rules.engine.situation",
}


def __getattr__(name: str) -> Any:
    """Import a public name on first use, so that ``marram --help`` loads no Rule."""
    if name not in _WHERE:
        raise AttributeError(f"module 'marram' has no attribute {name!r}; it offers {', '.join(__all__)}.")
    found = getattr(import_module(_WHERE[name]), name)
    globals()[name] = found
    return found
