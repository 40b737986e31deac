"""marram: the workbench of a golf rules official.

Facts of a situation → the ruling under an edition of the Rules → relief areas drawn to scale.

>>> from datetime import date
>>> import marram
>>> result = marram.rule("ball_moved_by_player", {"cause_known": "no"}, played_on=date(2024, 5, 1))
>>> result.action
<Action.PLAY_AS_IT_LIES: 'play_as_it_lies'>
"""

from marram.rules.engine.combine import combine
from marram.rules.engine.request import rule

__version__ = "0.1.0"
__all__ = ["__version__", "combine", "rule"]
