"""What an official asks of the ground: what lies here, what interferes, relief drawn, a drop checked, holes proposed, the marking."""
