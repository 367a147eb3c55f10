namespace Platewright.Fit.Search;

/// <summary>Hears of every cell in the order of the search: what a written proof consists of.</summary>
internal interface ICellListener
{
    /// <summary>The cell lies outside the domain: the container's symmetry covers it.</summary>
    void Outside();

    /// <summary>The cell is replaced by its halves along each axis, in the level below.</summary>
    void Split();

    /// <summary>The cell is given up: these weighted contacts bound it.</summary>
    void Closed(IReadOnlyList<(double Weight, Contact Contact)> weights);

    /// <summary>The budget ran out here.</summary>
    void Open();
}
