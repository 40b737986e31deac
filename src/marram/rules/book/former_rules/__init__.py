"""What was ruled until 2018, beside the present Rules, for teaching only."""
